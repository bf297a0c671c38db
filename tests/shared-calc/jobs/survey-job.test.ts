import { describe, expect, test } from 'vitest';
import { surveyJob, surveyLines } from '#shared-calc/jobs/survey-job.ts';
import { linesOf } from '#shared-calc/recipe/lines-of.ts';
import { workedJob } from '#tests/worked-job.ts';
import { DEMO_DAY, demoRecords } from '#tests/demo-bench.ts';
import { after, faultOf, jobOf, libraryJob } from './demo-jobs.ts';

describe('surveyJob', () => {
  test('what was found holds for the whole job, as ours, and the job is surveyed', () => {
    const records = libraryJob();
    const surveyed = after(
      records,
      surveyJob(records, {
        job: 'J02',
        figures: [
          { line: 'shelf_rating', text: '60 kg' },
          { line: 'room_summer', text: '25' },
        ],
        access: 'Narrowest door 780 mm',
      }),
    );
    const { state, access, nextAct } = jobOf(surveyed, 'J02');
    expect([state, access, nextAct]).toEqual(['surveyed', 'Narrowest door 780 mm', 'Issue the quote']);
    const { bench } = workedJob(surveyed, jobOf(surveyed, 'J02'), DEMO_DAY);
    const found = ['shelf_rating', 'room_summer'].map((line) => bench.box('T05', line));
    expect(found.map(({ value, state: of }) => [value, of])).toEqual([
      [60, 'job'],
      [25, 'job'],
    ]);
    expect(surveyed.localValue.get('J02.shelf_rating')?.by).toBe('us');
  });

  test('a figure that cannot be read refuses the whole survey', () => {
    const fault = faultOf(
      surveyJob(libraryJob(), { job: 'J02', figures: [{ line: 'shelf_rating', text: '60 L' }], site: 'x' }),
    );
    expect(fault?.kind).toBe('unreadable');
  });
});

describe('surveyLines', () => {
  test('a survey is asked for the figures of the place, not for the kit', () => {
    expect(surveyLines(linesOf(demoRecords(), 'H1')).map((line) => line.name)).toEqual([
      'altitude',
      'room_summer',
      'room_winter',
      'room_lowest',
      'public_site',
      'humidity_summer',
      'humidity_winter',
      'shelf_rating',
      'shelf_share',
      'sun_area',
    ]);
  });
});
