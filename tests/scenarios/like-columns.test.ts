import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { onceBench } from '#shared-calc/bench/once-bench.ts';
import { orderSums } from '#shared-calc/bench/order-sums.ts';
import { lwJson, useDemoBook } from '#tests/electron/cli/run-cli.ts';
import { demoColumn, demoPricing, demoRecords } from '#tests/demo-bench.ts';

/*
 * A job has one price, whether its tanks are ordered as two of one size or as two equal sizes.
 */

const records = demoRecords();
const pricing = demoPricing(records);

/** An answer without its checks, which are said size by size. */
function figuresOf(answer: unknown): unknown {
  const { checks: _, against: _against, ...figures } = z.looseObject({}).parse(answer);
  return figures;
}

/** Columns of tanks with counts: `[['T07', 2], ['T07', 1]]`, keyed as an order keys them. */
function sumsOf(parts: readonly (readonly [string, number])[], locals: Readonly<Record<string, string>> = {}) {
  const columns = parts.map(([tank, count], at) => ({
    ...demoColumn(records, tank, locals),
    key: at === 0 ? tank : `${tank}#${at + 1}`,
    count,
  }));
  const lines = [...records.line.values()].filter((line) => line.recipe === 'H1');
  const bench = onceBench({ lines, columns, job: new Map(), isOldPrice: () => false });
  const sums = orderSums(
    bench,
    columns.map(({ key }) => key),
    pricing,
  );
  if (!sums.ok) throw new Error(JSON.stringify(sums.fault));
  return sums.value;
}

describe('two sizes alike', () => {
  const { book } = useDemoBook('2026-11-30');

  test.each(['quote', 'needs'])('%s of T07,T07 is that of T07x2, to the last digit', async (command) => {
    const [apart, together] = await Promise.all(
      ['T07,T07', 'T07x2'].map((sizes) =>
        lwJson(command, '--book', book(), '--sizes', sizes, '--kit', 'full', '--on', '2026-11-30'),
      ),
    );
    expect(figuresOf(apart)).toEqual(figuresOf(together));
  });

  test('and that price is the one worked by hand', async () => {
    const quote = await lwJson('quote', '--book', book(), '--sizes', 'T07,T07', '--kit', 'full', '--on', '2026-11-30');
    expect(quote).toMatchObject({ gross: '4071.44' });
  });

  test('any split of like columns has the needs, the hours and the price of one column of them all', () => {
    const splits = fc.array(fc.integer({ min: 1, max: 4 }), { minLength: 2, maxLength: 4 });
    const tanks = fc.constantFrom('T01', 'T03', 'T05', 'T07', 'T08');
    const texts = fc.constantFrom({}, { litter: '33 mm' }, { soil_rise: '0 mm', kit: 'full' });
    fc.assert(
      fc.property(tanks, splits, texts, (tank, counts, locals) => {
        const all = counts.reduce((sum, count) => sum + count, 0);
        const apart = sumsOf(
          counts.map((count) => [tank, count]),
          locals,
        );
        expect(apart).toEqual(sumsOf([[tank, all]], locals));
      }),
      { numRuns: 30 },
    );
  });

  test('sizes that differ in one cell are costed apart, as ever', () => {
    const both = sumsOf([
      ['T07', 1],
      ['T08', 1],
    ]);
    const [one, other] = [sumsOf([['T07', 1]]), sumsOf([['T08', 1]])];
    const leaves = (sums: typeof both) => sums.needs.needs.find(({ material }) => material === 'M01')?.costCoins ?? 0;
    expect(leaves(both)).toBe(leaves(one) + leaves(other));
  });
});
