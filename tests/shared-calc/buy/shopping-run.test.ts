import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { NeedAmount } from '#shared-calc/buy/needs.ts';
import { shoppingRun, type RunPart, type ShoppingRun } from '#shared-calc/buy/shopping-run.ts';
import { NO_STOCK, type Stock } from '#shared-calc/buy/stock.ts';
import { demoPrices, need, threeTanks } from './demo-goods.ts';

const threeSizes: readonly RunPart[] = threeTanks.map((each) => ({ ...each, job: 'order' }));

describe('shoppingRun', () => {
  test('three sizes together: 249.80 for 344.70 alone, 255.80 for 370.20 landed', () => {
    const run = runOver(threeSizes);
    expect(run.materials.map((each) => [each.material, said(each.packs), each.costCoins, each.aloneCoins])).toEqual([
      ['M01', '1x45 2x10', 5110, 6090],
      ['M04', '3x6', 2160, 2880],
      ['M05', '1x70', 2450, 3220],
      ['M06', '1x50', 3400, 5340],
      ['M07', '1x40', 5400, 8100],
      ['M08', '1x20', 2200, 2960],
      ['M09', '2x12', 1840, 2760],
      ['M15', '1x500 1x100', 2420, 3120],
    ]);
    expect(totals(run)).toEqual([24_980, 34_470, 25_580, 37_020]);
  });

  test('what the three sizes leave in the store', () => {
    const left = runOver(threeSizes).materials.map((each) => Number(each.leftOver.toFixed(3)));
    expect(left).toEqual([7.866, 2.285, 24.313, 4.313, 9.543, 4.771, 8.771, 69.17]);
  });

  test('carriage: the large order travels free, the leaves do not', () => {
    expect(runOver(threeSizes).suppliers).toEqual([
      {
        supplier: 'hollin',
        name: "Hollin Lane Growers' Supply",
        goodsCoins: 22_560,
        carriageCoins: 0,
        shortOfMinimumCoins: 0,
      },
      {
        supplier: 'saltbarrow',
        name: 'Saltbarrow Bark and Timber',
        goodsCoins: 2420,
        carriageCoins: 600,
        shortOfMinimumCoins: 0,
      },
    ]);
  });

  test('alone, stock goes to the sizes in their order', () => {
    const parts = [part('T03', [need('M01', 8)]), part('T05', [need('M01', 8)])];
    const [clay] = runOver(parts, new Map([['M01', 9]])).materials;
    expect(clay).toMatchObject({ used: 16, onHand: 9, costCoins: 980, aloneCoins: 980, leftOver: 3 });
  });

  test('a size built four times is one part: its packs are rounded over all four', () => {
    const run = runOver([part('T03', [need('M01', 2.5, { count: 4 })])]);
    expect(totals(run)).toEqual([980, 980, 1730, 1730]);
  });

  test('what one job needs once is bought once for it, and once for another job', () => {
    const cover = need('M26', 60, { perJob: true });
    const parts = [part('T03', [cover]), part('T05', [cover]), part('J02', [cover], 'J02')];
    expect(runOver(parts).materials[0]).toMatchObject({ used: 120, costCoins: 2400, aloneCoins: 3600 });
  });

  test('own goods are never on it, cut glass is', () => {
    const run = runOver([part('T05', [need('SP', 1), need('VAN', 36), need('M25b', 0.249546), need('T05', 1)])]);
    expect(run.materials.map((each) => [each.material, said(each.packs), each.costCoins])).toEqual([
      ['M25b', '', 1160],
      ['T05', '1x1', 14_800],
    ]);
  });

  test('with all on hand nothing is bought and no carriage asked', () => {
    const run = runOver([part('T03', [need('M01', 6)])], new Map([['M01', 10]]));
    expect([run.suppliers, ...totals(run)]).toEqual([[], 0, 0, 0, 0]);
  });

  test('one pack more that brings free carriage for less than it is reported beside the order', () => {
    const run = runOver([part('T07', [need('M07', 40), need('M01', 30), need('M05', 4)])]);
    expect(run.suppliers).toEqual([
      {
        supplier: 'hollin',
        name: "Hollin Lane Growers' Supply",
        goodsCoins: 8800,
        carriageCoins: 750,
        shortOfMinimumCoins: 0,
        better: {
          material: 'M05',
          label: 'coir',
          pack: { id: 'M05-9', amount: 9, unit: 'L', priceCoins: 460 },
          landedNowCoins: 9550,
          landedThenCoins: 9260,
        },
      },
    ]);
    expect(run.landedTogetherCoins).toBe(9550);
  });

  test('together is never dearer than each alone, with carriage or without', () => {
    fc.assert(
      fc.property(someParts, someStock, (parts, stock) => {
        const run = runOver(parts, stock);
        expect(run.togetherCoins).toBeLessThanOrEqual(run.aloneCoins);
        expect(run.landedTogetherCoins).toBeLessThanOrEqual(run.landedAloneCoins);
      }),
    );
  });

  test('coins add up: materials to the run, goods and carriage to what lands', () => {
    fc.assert(
      fc.property(someParts, someStock, (parts, stock) => {
        const run = runOver(parts, stock);
        expect(sum(run.materials.map((each) => each.costCoins))).toBe(run.togetherCoins);
        expect(sum(run.materials.map((each) => each.aloneCoins))).toBe(run.aloneCoins);
        expect(sum(run.suppliers.map((each) => each.goodsCoins))).toBe(run.togetherCoins);
        expect(run.togetherCoins + sum(run.suppliers.map((each) => each.carriageCoins))).toBe(run.landedTogetherCoins);
      }),
    );
  });

  test('without stock it is never cheaper', () => {
    fc.assert(
      fc.property(someParts, someStock, (parts, stock) => {
        const [together = 0, alone = 0] = totals(runOver(parts, stock));
        const [bare = 0, bareAlone = 0] = totals(runOver(parts));
        expect([bare >= together, bareAlone >= alone]).toEqual([true, true]);
      }),
    );
  });
});

const ids = ['M01', 'M04', 'M07', 'M15', 'M25b', 'PG'];
const amount = fc.integer({ min: 0, max: 6000 }).map((hundredths) => hundredths / 100);
const someStock = fc.dictionary(fc.constantFrom(...ids), amount).map((stock) => new Map(Object.entries(stock)));
const someParts = fc
  .array(
    fc.record({ amounts: fc.array(amount, { minLength: 6, maxLength: 6 }), count: fc.integer({ min: 1, max: 3 }) }),
    {
      minLength: 1,
      maxLength: 4,
    },
  )
  .map((parts) =>
    parts.map(({ amounts, count }, at) =>
      part(
        `S${at}`,
        ids.map((id, of) => need(id, amounts[of] ?? 0, { count, column: `S${at}`, perJob: of === 5 })),
      ),
    ),
  );

function part(id: string, needs: readonly NeedAmount[], job = 'order'): RunPart {
  return { id, job, needs: needs.map((each) => ({ ...each, column: id })) };
}

function runOver(parts: readonly RunPart[], stock: Stock = NO_STOCK): ShoppingRun {
  const run = shoppingRun(parts, { prices: demoPrices, stock });
  if (!run.ok) throw new Error(JSON.stringify(run.fault));
  return run.value;
}

function totals(run: ShoppingRun): readonly number[] {
  return [run.togetherCoins, run.aloneCoins, run.landedTogetherCoins, run.landedAloneCoins];
}

function said(packs: readonly { readonly count: number; readonly amount: number }[]): string {
  return packs.map((pack) => `${pack.count}x${pack.amount}`).join(' ');
}

function sum(coins: readonly number[]): number {
  return coins.reduce((all, each) => all + each, 0);
}
