import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';

const root = fileURLToPath(new URL('../..', import.meta.url));
const recipes = join(root, 'fixtures/demo/recipes');
const Recipe = z.object({ lines: z.array(z.object({ name: z.string() })) });

/** Names of one word are also words of the trade, with other meanings. */
const names = new Set(
  readdirSync(recipes)
    .flatMap((file) => Recipe.parse(JSON.parse(readFileSync(join(recipes, file), 'utf8'))).lines)
    .map(({ name }) => name)
    .filter((name) => name.includes('_')),
);

/**
 * The trade functions use rules as examples; the next two know the lines of old books by name, and the columns of
 * tables as they were made; the last two make a recipe of the lines that the program brings.
 */
const mayNameLines = [
  'shared-calc/trade/',
  'shared-calc/rule/',
  'shared-calc/fields/first-recipes.ts',
  'electron/book/migrations/',
  'shared-calc/recipe/pattern.ts',
  'shared-calc/recipe/recipe-of-answers.ts',
];

const sources = ['shared-calc', 'electron', 'renderer']
  .flatMap((layer) =>
    readdirSync(join(root, layer), { recursive: true, encoding: 'utf8' }).map((file) => `${layer}/${file}`),
  )
  .map((file) => file.replaceAll('\\', '/'))
  .filter((file) => /\.tsx?$/.test(file) && !/\/dist\//.test(file))
  .filter((file) => !mayNameLines.some((path) => file.startsWith(path)));

describe('the program', () => {
  test('reads a line of a recipe by its use, never by its name', () => {
    const named = sources.flatMap((file) =>
      [...readFileSync(join(root, file), 'utf8').matchAll(/['"`{]([a-z][a-z0-9_]*)['"`}]/g)]
        .map(([, word = '']) => word)
        .filter((word) => names.has(word))
        .map((word) => `${file}: ${word}`),
    );

    expect(sources.length).toBeGreaterThan(500);
    expect(named).toEqual([]);
  });
});
