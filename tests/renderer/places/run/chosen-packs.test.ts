import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chosenRun, countsOf, withBest, withCount, type PackChoices } from '#renderer/places/run/chosen-packs.ts';
import type { RunMaterial } from '#shared-calc/buy/shopping-run.ts';
import { mediaRun, pricesOf, threeJobs } from './three-jobs.ts';

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
    const byHand = withCount(withCount(none, needOf('M01'), { id: packOf('M01', 45), count: 2 }), needOf('M01'), {
      id: packOf('M01', 10),
      count: 0,
    });
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
    const short = withCount(none, needOf('M01'), { id: packOf('M01', 45), count: 0 });
    const clay = chosenRun(run, short, prices).materials.find(({ material }) => material === 'M01');
    expect([clay?.short.toFixed(3), clay?.leftOver]).toEqual(['37.134', 0]);
  });

  test('a bill follows its packs across the sum that travels free', () => {
    // Leaves for 60.00 or more come carriage free from Saltbarrow: four bags of 500 g and none of 100 g are 76.00.
    const leaves = withCount(withCount(none, needOf('M15'), { id: packOf('M15', 500), count: 4 }), needOf('M15'), {
      id: packOf('M15', 100),
      count: 0,
    });
    const bill = chosenRun(run, leaves, prices).suppliers.find(({ supplier }) => supplier === 'S-saltbarrow');
    expect([bill?.goodsCoins, bill?.carriageCoins]).toEqual([7600, 0]);
  });

  test('back at its best, a material is as it was', () => {
    const byHand = withCount(none, needOf('M01'), { id: packOf('M01', 10), count: 9 });
    expect(chosenRun(run, withBest(byHand, 'M01'), prices)).toEqual(chosenRun(run, none, prices));
  });

  test('packs by hand that cover the need are never cheaper than the best', () => {
    fc.assert(
      fc.property(fc.nat({ max: 12 }), fc.nat({ max: 4 }), (small, large) => {
        const choice = new Map([
          [
            'M01',
            new Map([
              [packOf('M01', 10), small],
              [packOf('M01', 45), large],
            ]),
          ],
        ]);
        const clay = chosenRun(run, choice, prices).materials.find(({ material }) => material === 'M01');
        expect(clay && (clay.short > 0 || clay.overBestCoins >= 0)).toBe(true);
      }),
    );
  });
});

describe('withCount', () => {
  test('a choice begins from the packs that are bought now', () => {
    expect([...countsOf(needOf('M01')).values()]).toEqual([1, 2]);
    const one = withCount(none, needOf('M01'), { id: packOf('M01', 10), count: 3 });
    expect([...(one.get('M01') ?? [])]).toEqual([
      [packOf('M01', 45), 1],
      [packOf('M01', 10), 3],
    ]);
  });
});
