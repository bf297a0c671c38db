import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { placeHelp } from '#shared-calc/help/place-help.ts';
import { actNames } from '#shared-calc/words/act-names.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** The sources of page and menu. */
const sources = ['renderer', 'electron/main'].flatMap((folder) =>
  readdirSync(path.join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((file) => /\.tsx?$/.test(file) && !file.includes('dist'))
    .map((file) => readFileSync(path.join(root, folder, file), 'utf8')),
);

test('every name of an act stands on a button or in the menu', () => {
  const used = (act: string) => sources.some((text) => new RegExp(String.raw`actNames\.${act}\b`).test(text));
  expect(Object.keys(actNames).filter((act) => !used(act))).toEqual([]);
});

test('no name of an act is written beside the table', () => {
  // A name of one word is a word of the language too.
  const names = Object.values(actNames).filter((name) => name.includes(' '));
  const written = names.filter((name) =>
    sources.some((text) => text.includes(`'${name}'`) || text.includes(`>${name}<`)),
  );
  expect(written).toEqual([]);
});

test('no two acts have the same name, and the help describes none that has one', () => {
  const names: readonly string[] = Object.values(actNames);
  expect(names).toEqual([...new Set(names)]);
  const described = Object.values(placeHelp).flatMap(({ acts }) =>
    acts.flatMap((act) => ('how' in act ? act.how : [])),
  );
  expect(described.filter((how) => names.includes(how))).toEqual([]);
});
