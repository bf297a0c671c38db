import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { BenchInput } from '#shared-calc/bench/bench-input.ts';
import { joinLines, withOwnLines } from '#shared-calc/bench/column-lines.ts';
import { onceBench } from '#shared-calc/bench/once-bench.ts';
import { openBench, type Bench } from '#shared-calc/bench/open-bench.ts';
import { linesOf } from '#shared-calc/recipe/lines-of.ts';
import { demoColumn, demoRecipes, demoRecords } from '#tests/demo-bench.ts';

const records = demoRecords();
const lists = new Map(demoRecipes.map((recipe) => [recipe, linesOf(records, recipe)]));
const tanks = [...records.tank.keys()];

interface Wanted {
  readonly tank: string;
  readonly recipe: (typeof demoRecipes)[number];
}

function inputOf(sizes: readonly Wanted[], job: ReadonlyMap<string, string> = new Map()): BenchInput {
  const usual = lists.get('H1') ?? [];
  const columns = sizes.map(({ tank, recipe }) => {
    return { ...demoColumn(records, tank), lines: lists.get(recipe) ?? usual };
  });
  return { ...withOwnLines(usual, columns), job, isOldPrice: () => false };
}

/** Every cell of a bench as plain data. */
function cellsOf(bench: Bench) {
  const { lines, columns } = bench.input();
  return columns.flatMap(({ key }) =>
    lines.map(({ name }) => {
      const { value, state, check, range } = bench.box(key, name);
      return [key, name, value, state, check?.state, range];
    }),
  );
}

const wanted = fc.uniqueArray(fc.record({ tank: fc.constantFrom(...tanks), recipe: fc.constantFrom(...demoRecipes) }), {
  minLength: 1,
  maxLength: 3,
  selector: ({ tank }) => tank,
});

describe('a bench over several recipes', () => {
  test('each size comes to what it comes to alone, whichever engine works it', () => {
    fc.assert(
      fc.property(wanted, (sizes) => {
        const bench = openBench(inputOf(sizes));
        expect(cellsOf(bench)).toEqual(cellsOf(onceBench(inputOf(sizes))));
        for (const size of sizes) {
          const alone = onceBench(inputOf([size]));
          for (const { name } of bench.lines(size.tank)) {
            expect(bench.box(size.tank, name).value).toBe(alone.box(size.tank, name).value);
          }
        }
        bench.close();
      }),
      { numRuns: 8 },
    );
  });

  test('followed through edits, it reads as one worked anew', () => {
    fc.assert(
      fc.property(fc.array(wanted, { minLength: 2, maxLength: 4 }), fc.boolean(), (steps, isSet) => {
        const bench = openBench(inputOf(steps[0] ?? []));
        for (const [at, sizes] of steps.entries()) {
          const input = inputOf(sizes, new Map(isSet && at % 2 === 1 ? [['litter', '12 mm']] : []));
          const more = bench.update(input, [sizes[0]?.tank ?? '']);
          while (more());
          expect(cellsOf(bench)).toEqual(cellsOf(onceBench(input)));
        }
        bench.close();
      }),
      { numRuns: 6 },
    );
  });

  test('its rows are the lines of all, each name once, in the order of each recipe', () => {
    fc.assert(
      fc.property(fc.uniqueArray(fc.constantFrom(...demoRecipes), { minLength: 1 }), (recipes) => {
        const some = recipes.map((recipe) => lists.get(recipe) ?? []);
        const names = joinLines(some).map(({ name }) => name);
        expect(new Set(names).size).toBe(names.length);
        expect(new Set(names)).toEqual(new Set(some.flat().map(({ name }) => name)));
        const first = some[0]?.map(({ name }) => name) ?? [];
        expect(names.filter((name) => first.includes(name))).toEqual(first);
      }),
    );
  });
});
