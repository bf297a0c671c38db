import { describe, expect, test } from 'vitest';
import { workAmounts } from '#shared-calc/bench/order-amounts.ts';
import { onceBench } from '#shared-calc/bench/once-bench.ts';
import { orderSums } from '#shared-calc/bench/order-sums.ts';
import { allBuilds } from '#shared-calc/buy/all-builds.ts';
import { demoColumn, demoOnce, demoPricing, demoRecords } from '#tests/demo-bench.ts';

const records = demoRecords();

/** Columns of T07, each with how often it is built. */
function worked(counts: readonly number[], learning: string) {
  const house = demoOnce({ sizes: ['T07'], job: { learning } }, records).input();
  const columns = counts.map((count, nth) => ({ ...demoColumn(records, 'T07'), key: `T07#${nth + 1}`, count }));
  const bench = onceBench({ ...house, columns });
  const keys = bench.input().columns.map(({ key }) => key);
  const work = workAmounts(bench, keys);
  const sums = orderSums(bench, keys, demoPricing(records));
  if (!work.ok || !sums.ok) throw new Error('no sums');
  const planting = allBuilds(work.value).filter(({ line }) => line === 'plant_work');
  const survey = allBuilds(work.value).filter(({ line }) => line === 'survey_work');
  const minutes = (some: typeof planting) => some.reduce((sum, { amount }) => sum + amount, 0);
  return { planting: minutes(planting), survey: minutes(survey), hours: sums.value.quote.hours };
}

describe('workAmounts', () => {
  test('at 90 % eight like builds take 6.5737 first ones', () => {
    const first = worked([1], '90 %').planting;
    expect(worked([8], '90 %').planting / first).toBeCloseTo(6.5737, 4);
  });

  test('two T07 take 21.75 h instead of 22.75, and the survey its minutes once', () => {
    const [taught, house] = [worked([2], '90 %'), worked([2], '100 %')];
    expect([taught.hours, house.hours, taught.survey, house.survey]).toEqual([21.75, 22.75, 45, 45]);
  });

  test('two columns of one tank with the same boxes repeat each other', () => {
    expect(worked([1, 1], '90 %').planting).toBeCloseTo(worked([2], '90 %').planting, 9);
  });

  test('where nothing is learned every build takes as long', () => {
    expect(worked([8], '100 %').planting).toBeCloseTo(8 * worked([1], '100 %').planting, 9);
  });
});
