import { describe, expect, test } from 'vitest';
import { derive } from '#shared-calc/derive/derived.ts';
import { jobNeeds } from '#shared-calc/derive/job-needs.ts';
import { pickLists } from '#shared-calc/papers/pick-list.ts';
import { workedJob } from '#tests/worked-job.ts';
import { displayOf } from '#shared-calc/records/display-of.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';
import { jobOf, libraryJob, valueOf } from '#tests/shared-calc/jobs/demo-jobs.ts';

describe('jobNeeds', () => {
  test('what the Store can give comes off, and plants stand by name', () => {
    const records = libraryJob({ audience: 'School children' });
    const derived = derive(records, DEMO_DAY);
    const { list, plants } = valueOf(jobNeeds(derived, workedJob(records, jobOf(records, 'J02'), DEMO_DAY)));
    const clay = list.needs.find(({ material }) => material === 'M01');
    expect([clay?.onHand, clay?.packs.map(({ amount, count }) => [amount, count])]).toEqual([7, [[10, 1]]]);
    expect(
      plants.find((order) => order.class === 'climber')?.species.map(({ plant, count }) => [plant.id, count]),
    ).toEqual([['P02', 3]]);
  });
});

describe('pickLists', () => {
  test('there is a list for each size, in the order of use', () => {
    const records = libraryJob({
      sizes: [
        { tank: 'T05', count: 1 },
        { tank: 'T07', count: 2 },
      ],
    });
    const display = displayOf(workshopOf(records));
    const lists = pickLists(workedJob(records, jobOf(records, 'J02'), DEMO_DAY).bench, records, display);
    expect(lists.map(({ size, builds, rows }) => [size, builds, rows[0]?.section, rows.at(-1)?.section])).toEqual([
      ['T05', 1, 'Tank', 'Mist and water'],
      ['T07', 2, 'Tank', 'Mist and water'],
    ]);
  });
});
