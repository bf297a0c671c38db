import { describe, expect, test } from 'vitest';
import { typedJob, noWishes } from '#renderer/places/jobs/asked-job.ts';
import { sizesOf, sizeWords } from '#shared-calc/jobs/job-sheet.ts';
import { DEMO_DAY, demoRecords } from '#tests/demo-bench.ts';
import { done } from '#tests/shared-calc/acts/do-act.ts';
import { jobOf, valueOf } from '#tests/shared-calc/jobs/demo-jobs.ts';

const wishes = { ...noWishes, title: 'Reading room', recipe: 'H1' };

describe('typedJob', () => {
  test('a first message becomes an enquiry with its sizes and its wanted handover', () => {
    const typed = valueOf(
      typedJob(demoRecords(), { ...wishes, sizes: 'T05, T07x2', handover: '2027-06-04' }, { today: DEMO_DAY }),
    );
    const { records } = done(demoRecords(), 'newJob', typed);
    const { state, handover, enquiredOn } = jobOf(records, 'J02');
    expect([state, handover, enquiredOn, sizesOf(records, 'J02').map(sizeWords)]).toEqual([
      'enquiry',
      '2027-06-04',
      DEMO_DAY,
      ['T05', 'T07x2'],
    ]);
  });

  test('sizes and handover may wait', () => {
    expect(typedJob(demoRecords(), wishes, { today: DEMO_DAY }).ok).toBe(true);
  });

  test.each([
    [{ sizes: 'T70' }, 'No tank called T70 in the tank book. Did you mean T07?'],
    [{ handover: 'June' }, `Handover wanted: "June" is not a day; write it as ${DEMO_DAY}.`],
  ])('%o is refused with its cure', (wrong, fault) => {
    expect(typedJob(demoRecords(), { ...wishes, ...wrong }, { today: DEMO_DAY })).toEqual({ ok: false, fault });
  });
});
