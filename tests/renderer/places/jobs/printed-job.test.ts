import { describe, expect, test } from 'vitest';
import { jobNeeds, jobPickLists } from '#renderer/places/jobs/printed-job.ts';
import { setSizes } from '#shared-calc/jobs/set-sizes.ts';
import { displayOf } from '#shared-calc/records/display-of.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';
import { after, jobOf, libraryJob, valueOf } from '#tests/shared-calc/jobs/demo-jobs.ts';

describe('jobNeeds', () => {
  test('what the Store can give comes off, and plants stand by name', () => {
    const records = libraryJob({ audience: 'School children' });
    const { list, sizes, plants } = valueOf(jobNeeds(records, jobOf(records, 'J02'), DEMO_DAY));
    const clay = list.needs.find(({ material }) => material === 'M01');
    expect([sizes, clay?.onHand, clay?.packs.map(({ amount, count }) => [amount, count])]).toEqual([
      'T05',
      7,
      [[10, 1]],
    ]);
    expect(
      plants.find((order) => order.class === 'climber')?.species.map(({ plant, count }) => [plant.id, count]),
    ).toEqual([['P02', 3]]);
  });

  test('a job without a size says so', () => {
    const records = libraryJob();
    const bare = after(records, setSizes(records, 'J02', []));
    expect(jobNeeds(bare, jobOf(bare, 'J02'), DEMO_DAY)).toEqual({
      ok: false,
      fault: 'J02 has no size yet: take one first.',
    });
  });
});

describe('jobPickLists', () => {
  test('there is a list for each size, in the order of use', () => {
    const records = libraryJob({
      sizes: [
        { tank: 'T05', count: 1 },
        { tank: 'T07', count: 2 },
      ],
    });
    const display = displayOf(workshopOf(records));
    const lists = jobPickLists(records, { job: jobOf(records, 'J02'), on: DEMO_DAY, display });
    expect(lists.map(({ size, builds, rows }) => [size, builds, rows[0]?.section, rows.at(-1)?.section])).toEqual([
      ['T05', 1, 'Tank', 'Mist and water'],
      ['T07', 2, 'Tank', 'Mist and water'],
    ]);
  });
});
