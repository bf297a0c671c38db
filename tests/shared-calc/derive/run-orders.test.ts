import { derive } from '#shared-calc/derive/derived.ts';
import { describe, expect, test } from 'vitest';
import { orderBy } from '#shared-calc/papers/order-days.ts';
import { plantsOf } from '#renderer/places/run/plants-of.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';
import { libraryJob, valueOf } from '#tests/shared-calc/jobs/demo-jobs.ts';

describe('the orders of a run', () => {
  // Scenario 11 four weeks later: T05 Full, handover Wed 26 May 2027, plants ordered by Fri 26 Mar, tank by Tue 13 Apr.
  const records = libraryJob({ handover: '2027-05-26', audience: 'School children' });
  const facts = valueOf(derive(records, DEMO_DAY).run({ jobs: ['J02'] }));

  test('each supplier has the last day that a handover asks for', () => {
    expect([
      orderBy(['plants'], facts.planned()),
      orderBy(['tank'], facts.planned()),
      orderBy(['cover'], facts.planned()),
    ]).toEqual([
      { day: '2027-03-26', job: 'J02' },
      { day: '2027-04-13', job: 'J02' },
      { day: '2027-04-26', job: 'J02' },
    ]);
  });

  test('plants are resolved to species, and a class material knows its own', () => {
    expect(plantsOf('PC', facts.plants(), records)?.species.map(({ plant, count }) => [plant.name, count])).toEqual([
      ['Marcgravia sp., shingling', 3],
    ]);
    expect(plantsOf('M01', facts.plants(), records)).toBeUndefined();
  });

  test('a job without its deposit is on the run only as unpaid', () => {
    expect(facts.unpaid).toEqual(['J02']);
  });
});
