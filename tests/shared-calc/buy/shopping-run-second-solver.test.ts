import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { solve } from 'yalps';
import { carriageOf } from '#shared-calc/buy/carriage.ts';
import { shoppingRun, type RunSupplier, type ShoppingRun } from '#shared-calc/buy/shopping-run.ts';
import { packCases, randomRuns, type PackCase, type RandomRun } from './random-runs.ts';

/** Random shopping runs, compared with an integer solver; larger runs are in tests/long. */
describe('shoppingRun against an integer solver', () => {
  const runs = randomRuns({ materials: 60, builds: 4, needTenths: 400 });

  test('500 runs of up to 60 materials, 5 packs each and stock cost the same in goods, material by material', () => {
    const sizes: number[] = [];
    fc.assert(
      fc.property(runs, (random) => {
        const run = runOf(random);
        const least = packCases(random).map(leastBySolver);
        const ours = new Map(run.materials.map(({ material, costCoins }) => [material, costCoins]));
        sizes.push(least.length);
        expect(least.map((_, at) => ours.get(`M${at}`) ?? 0)).toEqual(least);
        expect(run.togetherCoins).toBe(least.reduce((sum, coins) => sum + coins, 0));
      }),
      { numRuns: 500, seed: 20_270_310 },
    );
    expect([sizes.length, Math.max(...sizes)]).toEqual([500, 60]);
  });

  test('500 runs: packs and stock cover every need', () => {
    fc.assert(
      fc.property(runs, (random) => {
        const short = runOf(random).materials.filter(({ packs, onHand, used, leftOver }) => {
          const bought = packs.reduce((sum, { count, amount }) => sum + count * amount, 0);
          return bought + onHand < used - 1e-6 || Math.abs(bought + onHand - used - leftOver) > 1e-6;
        });
        expect(short).toEqual([]);
      }),
      { numRuns: 500, seed: 20_270_310 },
    );
  });

  test('500 runs a little short of free carriage: what is offered lands for less, and no pack more for still less', () => {
    let offers = 0;
    const gaps = fc.array(fc.integer({ min: -500, max: 6000 }), { minLength: 3, maxLength: 3 });
    fc.assert(
      fc.property(runs, gaps, (far, someGaps) => {
        const random = nearFree(far, someGaps);
        const run = runOf(random);
        for (const bill of run.suppliers) {
          const landed = landedWithOneMore(bill, run, random);
          const now = bill.goodsCoins + bill.carriageCoins;
          const least = Math.min(...landed.values());
          offers += bill.better ? 1 : 0;
          expect(bill.better?.landedThenCoins).toBe(least < now ? least : undefined);
          const named = bill.better && landed.get(`${bill.better.material} ${bill.better.pack.id}`);
          expect(named).toBe(bill.better?.landedThenCoins);
        }
      }),
      { numRuns: 500, seed: 20_270_310 },
    );
    expect(offers).toBeGreaterThan(100);
  });
});

/** The same run from suppliers whose carriage is free just above what the run buys from them. */
function nearFree(random: RandomRun, gaps: readonly number[]): RandomRun {
  const goods = new Map(runOf(random).suppliers.map(({ supplier, goodsCoins }) => [supplier, goodsCoins]));
  const suppliers = [...random.prices.suppliers.values()].map((supplier, at) => {
    const freeFromCoins = Math.max(0, (goods.get(supplier.id) ?? 0) + (gaps[at] ?? 0));
    return [supplier.id, { ...supplier, freeFromCoins }] as const;
  });
  return { ...random, prices: { ...random.prices, suppliers: new Map(suppliers) } };
}

function runOf({ parts, prices, stock }: RandomRun): ShoppingRun {
  const run = shoppingRun(parts, { prices, stock });
  if (!run.ok) throw new Error(JSON.stringify(run.fault));
  return run.value;
}

function leastBySolver({ shortTenths, packs }: PackCase): number {
  if (shortTenths <= 0) return 0;
  const solution = solve(
    {
      direction: 'minimize',
      objective: 'coins',
      constraints: { tenths: { min: shortTenths } },
      variables: Object.fromEntries(packs.map(({ id, tenths, priceCoins }) => [id, { tenths, coins: priceCoins }])),
      integers: true,
    },
    { tolerance: 0, maxIterations: 1_000_000 },
  );
  return solution.status === 'optimal' ? Math.round(solution.result) : Number.NaN;
}

/** Landed cost of the supplier's order with one more pack, by material and pack, from the terms alone. */
function landedWithOneMore(bill: RunSupplier, run: ShoppingRun, { prices }: RandomRun): ReadonlyMap<string, number> {
  const terms = prices.suppliers.get(bill.supplier);
  if (!terms) throw new Error(`no supplier ${bill.supplier}`);
  const listed = run.materials.filter(({ supplier }) => supplier === bill.supplier);
  return new Map(
    listed.flatMap(({ material }) =>
      (prices.goods.get(material)?.packs ?? []).map(({ id, priceCoins }) => {
        const goods = bill.goodsCoins + priceCoins;
        return [`${material} ${id}`, goods + carriageOf(goods, terms)] as const;
      }),
    ),
  );
}
