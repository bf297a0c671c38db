import { describe, expect, test } from 'vitest';
import { surveyJob, surveyLines } from '#shared-calc/jobs/survey-job.ts';
import { linesOf } from '#shared-calc/recipe/lines-of.ts';
import { workedJob } from '#tests/worked-job.ts';
import { DEMO_DAY, demoRecords } from '#tests/demo-bench.ts';
import { setValues } from '#shared-calc/jobs/set-values.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { after, faultOf, jobOf, libraryJob, written } from './demo-jobs.ts';

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

describe('surveyGiven', () => {
  const answers = {
    shelfRatingKg: 60,
    roomSummerC: 25,
    roomWinterC: 20.5,
    roomLowestC: 16,
    humiditySummer: 0.57,
    humidityWinter: 0.4,
    sunAreaM2: 0.2,
    publicRoom: 'yes',
  } as const;
  const surveyed = after(libraryJob(), surveyJob(libraryJob(), { job: 'J02', figures: [], survey: answers }));
  const boxOf = (records: Records, line: string) => {
    const { value, state, text } = workedJob(records, jobOf(records, 'J02'), DEMO_DAY).bench.box('T05', line);
    return [value, state, text];
  };

  test('every figure that was asked stands in its line, as the survey', () => {
    const lines = {
      shelf_rating: [60, 'survey', '60 kg'],
      room_summer: [25, 'survey', '25 degC'],
      room_winter: [20.5, 'survey', '20.5 degC'],
      room_lowest: [16, 'survey', '16 degC'],
      humidity_summer: [0.57, 'survey', '57 %'],
      humidity_winter: [0.4, 'survey', '40 %'],
      sun_area: [0.2, 'survey', '0.2 m2'],
      public_site: [true, 'survey', 'yes'],
    };
    expect(Object.fromEntries(Object.keys(lines).map((line) => [line, boxOf(surveyed, line)]))).toEqual(lines);
  });

  test('a box of the job stands over the survey, and taken back it is as the survey again', () => {
    const over = written(surveyed, 'us', { shelf_rating: '80 kg', 'T05.room_summer': '27 degC' });
    expect([boxOf(over, 'shelf_rating'), boxOf(over, 'room_summer')]).toEqual([
      [80, 'job', '80 kg'],
      [27, 'local', '27 degC'],
    ]);
    const back = after(
      over,
      setValues(over, { job: 'J02', writings: [{ line: 'shelf_rating', text: undefined }], by: 'us' }),
    );
    expect(boxOf(back, 'shelf_rating')).toEqual([60, 'survey', '60 kg']);
  });

  test('what nobody asked is as the house', () => {
    expect(boxOf(libraryJob(), 'shelf_rating')).toEqual([100, 'house', '100 kg']);
  });

  test('sun for some hours on glass that nobody measured leaves the hottest day not known', () => {
    const sunny = after(libraryJob(), surveyJob(libraryJob(), { job: 'J02', figures: [], survey: { sunHours: 3 } }));
    const shaded = after(sunny, surveyJob(sunny, { job: 'J02', figures: [], survey: { sunHours: 0 } }));
    expect([boxOf(sunny, 'sun_area')[1], boxOf(sunny, 'hottest_day')[0], boxOf(shaded, 'sun_area')]).toEqual([
      'needs a figure',
      undefined,
      [0, 'survey', '0 m2'],
    ]);
  });
});
