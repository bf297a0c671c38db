import { derive } from '#shared-calc/derive/derived.ts';
import { describe, expect, test } from 'vitest';
import { writeJob, type JobFields } from '#shared-calc/acts/job-acts.ts';
import { applyChange, invertChange } from '#shared-calc/records/change.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';
import { after, jobOf, libraryJob, valueOf } from '#tests/shared-calc/jobs/demo-jobs.ts';

const written = (records: Records, fields: JobFields) =>
  writeJob.run(derive(records, DEMO_DAY), { job: 'J02', fields });

describe('writeJob', () => {
  test('what is told of a job is rewritten under a label that says what', () => {
    const records = libraryJob();
    const change = valueOf(written(records, { client: 'Brackenlume Library', site: 'Oak shelf' }));
    expect([change.label, jobOf(applyChange(records, change), 'J02').site]).toEqual([
      'J02: client, place',
      'Oak shelf',
    ]);
  });

  test('a date that is emptied is gone', () => {
    const records = libraryJob({ handover: '2027-06-04' });
    const without = after(records, written(records, { handover: null }));
    expect('handover' in jobOf(without, 'J02')).toBe(false);
  });

  test('the way in is measured, and no longer known', () => {
    const records = libraryJob();
    const change = valueOf(written(records, { narrowestMm: 780 }));
    const measured = applyChange(records, change);
    expect([change.label, jobOf(measured, 'J02').narrowestMm]).toEqual(['J02: narrowest on the way in', 780]);
    expect('narrowestMm' in jobOf(after(measured, written(measured, { narrowestMm: null })), 'J02')).toBe(false);
    expect(written(records, { narrowestMm: -1 }).ok).toBe(false);
  });

  test('a job keeps a title', () => {
    expect(written(libraryJob(), { title: ' ' })).toEqual({ ok: false, fault: { kind: 'no-title' } });
  });

  test('undone, every record is as it was', () => {
    const records = libraryJob();
    const change = valueOf(written(records, { note: 'Second bell at noon', basis: 'packs' }));
    expect(applyChange(applyChange(records, change), invertChange(change))).toEqual(records);
  });
});
