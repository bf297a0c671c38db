import { describe, expect, test } from 'vitest';
import { chosenRun } from '#shared-calc/buy/chosen-packs.ts';
import { choosePacks, packChoices, spendChoices } from '#shared-calc/jobs/pack-choices.ts';
import { applyChange, invertChange } from '#shared-calc/records/change.ts';
import { mediaRun, pricesOf, threeJobs } from '#tests/shared-calc/derive/three-jobs.ts';

const jobs = ['J02', 'J03', 'J04'];
const twoLarge = new Map([
  ['M01-45', 2],
  ['M01-10', 0],
]);

describe('choosePacks', () => {
  const records = threeJobs();
  const change = choosePacks(records, { jobs, material: 'M01', counts: twoLarge });
  const chosen = applyChange(records, change);

  test('a choice is kept with the run over its jobs, in whatever order they are named', () => {
    expect([change.label, [...chosen.packChoice.values()]]).toEqual([
      'packs of M01 chosen for J02, J03, J04',
      [
        {
          id: 'PC-M01',
          jobs,
          material: 'M01',
          packs: [
            { pack: 'M01-45', count: 2 },
            { pack: 'M01-10', count: 0 },
          ],
        },
      ],
    ]);
    expect([...packChoices(chosen, ['J04', 'J02', 'J03'])]).toEqual([['M01', twoLarge]]);
  });

  test('a run over other jobs has its own', () => {
    expect([...packChoices(chosen, ['J02', 'J03'])]).toEqual([]);
    const other = applyChange(chosen, choosePacks(chosen, { jobs: ['J02'], material: 'M01', counts: twoLarge }));
    expect([...other.packChoice.keys()]).toEqual(['PC-M01', 'PC-M01-2']);
  });

  test('read again from the book, it still says what it costs over the best: 63.00 for 51.10', () => {
    const clay = chosenRun(mediaRun(chosen), packChoices(chosen, jobs), pricesOf(chosen)).materials.find(
      ({ material }) => material === 'M01',
    );
    expect([clay?.byHand, clay?.costCoins, clay?.overBestCoins]).toEqual([true, 6300, 1190]);
  });

  test('against dearer prices it says what it costs then', () => {
    const price = [...chosen.packPrice.values()].find(({ pack }) => pack === 'M01-45');
    if (!price) throw new Error('no price');
    const dearer = { ...chosen, packPrice: new Map(chosen.packPrice).set(price.id, { ...price, priceCoins: 4500 }) };
    const run = chosenRun(mediaRun(dearer), packChoices(dearer, jobs), pricesOf(dearer));
    const clay = run.materials.find(({ material }) => material === 'M01');
    // The cheapest choice is 6 x 10 L at 58.80.
    expect([clay?.costCoins, clay?.overBestCoins]).toEqual([9000, 3120]);
  });

  test('chosen anew it is the same record, and back to the best it is gone', () => {
    const anew = applyChange(chosen, choosePacks(chosen, { jobs, material: 'M01', counts: new Map([['M01-10', 6]]) }));
    expect([...anew.packChoice.values()].map(({ id, packs }) => [id, packs])).toEqual([
      ['PC-M01', [{ pack: 'M01-10', count: 6 }]],
    ]);
    const back = choosePacks(anew, { jobs, material: 'M01', counts: undefined });
    expect([back.label, applyChange(anew, back).packChoice.size]).toEqual(['packs of M01 back to the best', 0]);
  });

  test('undone, there is no choice', () => {
    expect(applyChange(chosen, invertChange(change))).toEqual(records);
  });
});

describe('spendChoices', () => {
  test('packs that came in are chosen no more, others are', () => {
    const clay = threeJobs();
    const both = ['M01', 'M04'].reduce(
      (records, material) => applyChange(records, choosePacks(records, { jobs, material, counts: twoLarge })),
      clay,
    );
    const left = applyChange(both, spendChoices(both, jobs, ['M01', 'M09']));
    expect([...left.packChoice.values()].map(({ material }) => material)).toEqual(['M04']);
    expect(spendChoices(both, ['J02'], ['M01']).removed).toEqual([]);
  });
});
