import { derive } from '#shared-calc/derive/derived.ts';
import { describe, expect, test } from 'vitest';
import { markOrdered } from '#shared-calc/acts/move-acts.ts';
import { orderBy } from '#shared-calc/papers/order-days.ts';
import { plantsOf } from '#renderer/places/run/plants-of.ts';
import { recordDeposit } from '#shared-calc/jobs/record-deposit.ts';
import { applyChange, invertChange } from '#shared-calc/records/change.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';
import { after, faultOf, jobOf, libraryJob, valueOf } from '#tests/shared-calc/jobs/demo-jobs.ts';

describe('the orders of a run', () => {
  // Scenario 11 four weeks later: T05 Full, handover Wed 26 May 2027, plants ordered by Fri 26 Mar, tank by Tue 13 Apr.
  const records = libraryJob({ handover: '2027-05-26', audience: 'School children' });
  const facts = valueOf(derive(records, DEMO_DAY).run({ jobs: ['J02'] }));
  const needsOf = (group: string) => facts.run.materials.filter((need) => need.group === group);

  test('each supplier has the last day that a handover asks for', () => {
    expect([
      orderBy(needsOf('plants'), facts.planned()),
      orderBy(needsOf('tank'), facts.planned()),
      orderBy(needsOf('cover'), facts.planned()),
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

  test('panes are named by the job and the size they are for', () => {
    expect(facts.panes()).toEqual([{ column: 'J02 T05', pieces: 1, lengthMm: 597, depthMm: 418, glassMm: 4 }]);
  });

  test('a job without its deposit is on the run only as unpaid', () => {
    expect(facts.unpaid).toEqual(['J02']);
  });
});

describe('markOrdered', () => {
  test('jobs whose deposit is in are ordered together, and undone together', () => {
    const records = libraryJob();
    const paid = after(records, recordDeposit(records, { job: 'J02', coins: 65_000, on: DEMO_DAY }));
    const change = valueOf(markOrdered.run(derive(paid, DEMO_DAY), { jobs: ['J02'] }));
    const ordered = applyChange(paid, change);
    expect([jobOf(ordered, 'J02').state, applyChange(ordered, invertChange(change))]).toEqual(['ordered', paid]);
  });

  test('one that is not paid for holds all of them back', () => {
    const records = libraryJob();
    const paid = after(records, recordDeposit(records, { job: 'J02', coins: 65_000, on: DEMO_DAY }));
    expect(faultOf(markOrdered.run(derive(paid, DEMO_DAY), { jobs: ['J02', 'J01'] }))).toEqual({
      kind: 'no-deposit-yet',
      job: 'J01',
      state: 'ordered',
    });
  });
});
