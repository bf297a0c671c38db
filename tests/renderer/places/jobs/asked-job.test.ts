import { describe, expect, test } from 'vitest';
import { askedJob, noWishes } from '#renderer/places/jobs/asked-job.ts';
import { applyChange } from '#shared-calc/records/change.ts';
import { sizesOf, sizeWords } from '#shared-calc/jobs/job-sheet.ts';
import { demoRecords } from '#tests/demo-bench.ts';
import { jobOf, valueOf } from '#tests/shared-calc/jobs/demo-jobs.ts';

const wishes = { ...noWishes, title: 'Reading room', recipe: 'H1' };

describe('askedJob', () => {
  test('a first message becomes an enquiry with its sizes and its wanted handover', () => {
    const records = demoRecords();
    const made = valueOf(askedJob(records, { ...wishes, sizes: 'T05, T07x2', handover: '2027-06-04' }, '2027-03-10'));
    const after = applyChange(records, made.change);
    const { state, handover, enquiredOn } = jobOf(after, made.job);
    expect([state, handover, enquiredOn, sizesOf(after, made.job).map(sizeWords)]).toEqual([
      'enquiry',
      '2027-06-04',
      '2027-03-10',
      ['T05', 'T07x2'],
    ]);
  });

  test('sizes and handover may wait', () => {
    expect(askedJob(demoRecords(), wishes, '2027-03-10').ok).toBe(true);
  });

  test.each([
    [{ title: '' }, 'A job needs a title.'],
    [{ sizes: 'T70' }, 'No tank called T70 in the tank book. Did you mean T07?'],
    [{ handover: 'June' }, 'Handover wanted: "June" is not a day; write it as 2027-03-10.'],
  ])('%o is refused with its cure', (wrong, fault) => {
    expect(askedJob(demoRecords(), { ...wishes, ...wrong }, '2027-03-10')).toEqual({ ok: false, fault });
  });
});
