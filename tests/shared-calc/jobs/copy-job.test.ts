import { describe, expect, test } from 'vitest';
import { copyJob } from '#shared-calc/jobs/copy-job.ts';
import { jobSheet } from '#shared-calc/jobs/job-sheets.ts';
import { recordDeposit } from '#shared-calc/jobs/record-deposit.ts';
import { applyChange } from '#shared-calc/records/change.ts';
import type { Job, Records } from '#shared-calc/records/records.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';
import { after, faultOf, jobOf, libraryJob, valueOf, withRecords, written } from './demo-jobs.ts';

describe('copyJob', () => {
  const first = written(
    written(
      libraryJob({
        sizes: [
          { tank: 'T05', count: 2 },
          { tank: 'T05', count: 1 },
        ],
        handover: '2027-04-28',
      }),
      'client',
      {
        'T05#2.litter': '20 mm',
      },
    ),
    'us',
    { drain_gap: '12 mm' },
  );
  const paid = withRecords(after(first, recordDeposit(first, { job: 'J02', coins: 100, on: DEMO_DAY })), 'quoteLine', [
    { id: 'J02-hardscape', job: 'J02', label: 'Carved name', group: 'hardscape', costCoins: 2000, by: 'client' },
  ]);

  test('sizes, local values with their authors and one-off lines are copied', () => {
    const copy = applyChange(paid, valueOf(copyJob(paid, 'J02', { on: '2027-03-20' })).change);
    expect(benchOf(copy, 'J03')).toEqual(benchOf(copy, 'J02'));
  });

  test('the copy is a new enquiry: no deposit, no handover, its own title', () => {
    const { job, change } = valueOf(copyJob(paid, 'J02', { on: '2027-03-20' }));
    const { depositOn, depositCoins, handover, state, title, enquiredOn } = jobOf(applyChange(paid, change), job);
    expect([job, change.label]).toEqual(['J03', 'J03: copy of J02']);
    expect({ depositOn, depositCoins, handover, state, title, enquiredOn }).toEqual({
      depositOn: undefined,
      depositCoins: undefined,
      handover: undefined,
      state: 'enquiry',
      title: 'Copy of Reading room',
      enquiredOn: '2027-03-20',
    });
  });

  test('the first job stays as it is', () => {
    const { change } = valueOf(copyJob(paid, 'J02', { on: DEMO_DAY }));
    expect([change.updated, change.removed]).toEqual([[], []]);
  });

  test('a job nobody knows is refused', () => {
    expect(faultOf(copyJob(paid, 'J77', { on: DEMO_DAY }))?.kind).toBe('no-job');
  });
});

/** The contents of a job's bench, without record ids. */
function benchOf(records: Records, id: Job['id']): unknown {
  const { columns, whole, oneOffs } = jobSheet(records, jobOf(records, id));
  return {
    columns: columns.map(({ key, tank, label, count, locals }) => ({ key, tank, label, count, locals })),
    whole,
    oneOffs: oneOffs.map(({ label, group, costCoins, by }) => ({ label, group, costCoins, by })),
  };
}
