import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chosenRun, withCount, type PackChoices } from '#shared-calc/buy/chosen-packs.ts';
import type { RunMaterial } from '#shared-calc/buy/shopping-run.ts';
import { mediaRun, pricesOf, threeJobs } from '#tests/shared-calc/derive/three-jobs.ts';

const records = threeJobs();
const run = mediaRun(records);
const prices = pricesOf(records);
const none: PackChoices = new Map();

function needOf(material: string): RunMaterial {
  const need = run.materials.find((each) => each.material === material);
  if (!need) throw new Error(`no ${material}`);
  return need;
}

function packOf(material: string, amount: number): string {
  return prices.goods.get(material)?.packs.find((pack) => pack.amount === amount)?.id ?? '';
}

describe('chosenRun', () => {
  test('with nothing chosen it is the best run, to the coin of scenario 4', () => {
    const { togetherCoins, aloneCoins, landedTogetherCoins, landedAloneCoins } = chosenRun(run, none, prices);
    expect([togetherCoins, aloneCoins, landedTogetherCoins, landedAloneCoins]).toEqual([
      24_980, 34_470, 25_580, 37_020,
    ]);
  });

  test('packs chosen by hand say what they cost over the best, and what is left', () => {
    const byHand = choice('M01', [
      [45, 2],
      [10, 0],
    ]);
    const clay = chosenRun(run, byHand, prices).materials.find(({ material }) => material === 'M01');
    expect([clay?.costCoins, clay?.overBestCoins, clay?.byHand, clay?.short, clay?.leftOver.toFixed(3)]).toEqual([
      6300,
      1190,
      true,
      0,
      '32.866',
    ]);
  });

  test('packs that do not cover the need say what is short', () => {
    const short = new Map([['M01', withCount(needOf('M01'), { id: packOf('M01', 45), count: 0 })]]);
    const clay = chosenRun(run, short, prices).materials.find(({ material }) => material === 'M01');
    expect([clay?.short.toFixed(3), clay?.leftOver]).toEqual(['37.134', 0]);
  });

  test('a bill follows its packs across the sum that travels free', () => {
    // Saltbarrow delivers free from 60.00: four bags of 500 g cost 76.00.
    const leaves = choice('M15', [
      [500, 4],
      [100, 0],
    ]);
    const bill = chosenRun(run, leaves, prices).suppliers.find(({ supplier }) => supplier === 'S-saltbarrow');
    expect([bill?.goodsCoins, bill?.carriageCoins]).toEqual([7600, 0]);
  });

  test('a pack that is sold no more, and a material that the store has, leave the best', () => {
    const gone = chosenRun(run, new Map([['M01', new Map([['sold no more', 3]])]]), prices);
    expect(gone.materials.find(({ material }) => material === 'M01')?.packs).toEqual([]);
    const had = {
      ...run,
      materials: run.materials.map((need) => ({ ...need, toBuy: 0, packs: [], packsCoins: 0, costCoins: 0 })),
    };
    const clay = chosenRun(had, choice('M01', [[45, 2]]), prices).materials.find(({ material }) => material === 'M01');
    expect([clay?.byHand, clay?.packs]).toEqual([false, []]);
  });

  test('packs by hand that cover the need are never cheaper than the best', () => {
    fc.assert(
      fc.property(fc.nat({ max: 12 }), fc.nat({ max: 4 }), (small, large) => {
        const byHand = choice('M01', [
          [10, small],
          [45, large],
        ]);
        const clay = chosenRun(run, byHand, prices).materials.find(({ material }) => material === 'M01');
        expect(clay && (clay.short > 0 || clay.overBestCoins >= 0)).toBe(true);
      }),
    );
  });
});

describe('withCount', () => {
  test('a choice begins from the packs that are bought now', () => {
    const one = withCount(needOf('M01'), { id: packOf('M01', 10), count: 3 });
    expect([...one]).toEqual([
      [packOf('M01', 45), 1],
      [packOf('M01', 10), 3],
    ]);
  });
});

function choice(material: string, counts: readonly (readonly [amount: number, count: number])[]): PackChoices {
  return new Map([[material, new Map(counts.map(([amount, count]) => [packOf(material, amount), count]))]]);
}
