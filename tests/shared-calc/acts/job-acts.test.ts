import { derive } from '#shared-calc/derive/derived.ts';
import { describe, expect, test } from 'vitest';
import { writeJob, writeSurvey, type JobFields } from '#shared-calc/acts/job-acts.ts';
import { runAct } from '#shared-calc/acts/act.ts';
import { allActs } from '#shared-calc/acts/all-acts.ts';
import { unasked } from '#shared-calc/fields/survey.ts';
import { applyChange, invertChange } from '#shared-calc/records/change.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { faultJson } from '#shared-calc/words/say-act-fault.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';
import { done } from './do-act.ts';
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

  test('a job keeps a title', () => {
    expect(written(libraryJob(), { title: ' ' })).toEqual({ ok: false, fault: { kind: 'no-title' } });
  });

  test('undone, every record is as it was', () => {
    const records = libraryJob();
    const change = valueOf(written(records, { note: 'Second bell at noon', basis: 'packs' }));
    expect(applyChange(applyChange(records, change), invertChange(change))).toEqual(records);
  });
});

describe('writeSurvey', () => {
  const answered = (records: Records, survey: unknown) => {
    const input = writeSurvey.input.safeParse({ job: 'J02', survey });
    return input.success ? writeSurvey.run(derive(records, DEMO_DAY), input.data) : undefined;
  };

  test('any part of it is written, and the other answers stay', () => {
    const begun = after(libraryJob(), valueOrThrow(answered(libraryJob(), { underFives: 'no', narrowestMm: 780 })));
    const more = after(begun, valueOrThrow(answered(begun, { narrowestMm: null, steps: 4 })));
    expect(jobOf(more, 'J02').survey).toEqual({ ...unasked, underFives: 'no', steps: 4 });
  });

  test.each([
    ['a note', { survey: { notes: 'Ring twice' } }, 'enquiry'],
    ['a name', { survey: { feeder: 'The keeper' } }, 'enquiry'],
    ['the way in told in words', { access: 'By the yard' }, 'enquiry'],
    ['a question put back to not asked', { survey: { lift: 'not asked', steps: null } }, 'enquiry'],
    ['a cell emptied', { figures: [{ line: 'shelf_rating', text: '' }] }, 'enquiry'],
    ['an answer', { survey: { lift: 'no' } }, 'surveyed'],
    ['no steps at all', { survey: { steps: 0 } }, 'surveyed'],
    ['a figure of the bench', { figures: [{ line: 'shelf_rating', text: '60 kg' }] }, 'surveyed'],
  ])('%s: %j, and the job is %s', (_, input, state) => {
    const { records } = done(libraryJob(), 'writeSurvey', writeSurvey.input.parse({ job: 'J02', ...input }));
    expect(jobOf(records, 'J02').state).toBe(state);
  });

  test.each([
    ['a width of nothing', { narrowestMm: 0 }],
    ['a hall of thirty metres', { clearLengthMm: 30_000 }],
    ['more sun than a day has', { sunHours: 25 }],
    ['half a step', { steps: 0.5 }],
    ['wetter than wet', { humiditySummer: 1.2 }],
    ['an answer that is none', { underFives: 'maybe' }],
    ['a question that is not asked', { cats: 'yes' }],
  ])('%s is refused', (_, survey) => {
    expect(answered(libraryJob(), survey)).toBeUndefined();
  });
});

describe('a figure out of its bounds', () => {
  const saidOf = (name: string, input: unknown) => {
    const one = allActs.find((each) => each.name === name);
    const result = one && runAct(one, derive(libraryJob(), DEMO_DAY), input);
    return result && !result.ok ? faultJson(result.fault) : undefined;
  };

  test.each([
    [{ narrowestMm: 99_999 }, 'survey.narrowestMm', 'Narrowest on the way in: 99999 mm is more than 20000 mm.'],
    [{ steps: -1 }, 'survey.steps', 'Steps: -1 is less than 0.'],
    [{ humiditySummer: 1.2 }, 'survey.humiditySummer', 'Room humidity, summer: 120 % is more than 100 %.'],
  ])('%j is said with its label, limit and unit', (survey, at, says) => {
    expect(saidOf('writeSurvey', { job: 'J02', survey })).toMatchObject({ kind: 'bad-input', at, says });
  });

  test('of a record that is put whole, too', () => {
    const job = jobOf(libraryJob(), 'J02');
    const record = { ...job, survey: { ...job.survey, sunHours: 25 } };
    expect(saidOf('put', { kind: 'job', record })?.says).toBe('Sun on the glass, a day: 25 h is more than 24 h.');
  });
});

function valueOrThrow<T>(result: T | undefined): T {
  if (result === undefined) throw new Error('refused');
  return result;
}
