import { describe, expect, test } from 'vitest';
import { derive } from '#shared-calc/derive/derived.ts';
import { houseLessons, plantLesson } from '#shared-calc/derive/house-lessons.ts';
import { workedJob } from '#tests/worked-job.ts';
import { jobTook, PLANTS_LOST } from '#shared-calc/derive/job-took.ts';
import type { Actual, Records } from '#shared-calc/records/records.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';
import { busyBook } from '#tests/renderer/places/prepare/busy-book.ts';

const records = busyBook();

function rowOf(from: Records, id: string, line: string) {
  const took = jobTook(derive(from, DEMO_DAY), workedJob(from, { id }, DEMO_DAY));
  const row = [...took.minutes, ...took.goods, ...took.after].find((each) => each.line === line);
  if (!row) throw new Error(line);
  return row;
}

describe('jobTook', () => {
  test('what was planned is of all builds: one T07 and two T03 take 16.837 and twice 6.244 L of clay', () => {
    expect(rowOf(records, 'J03', 'drainage_need').planned).toBeCloseTo(16.837 + 2 * 6.244, 2);
  });

  test('how far the plan of the drain interval may be off is said, and clay has its likely figure alone', () => {
    const { bench, keys } = workedJob(records, { id: 'J03' }, DEMO_DAY);
    const ranges = keys.map((key) => bench.box(key, 'drain_days').range);
    const ends = (end: 'from' | 'to') => ranges.map((range) => (typeof range === 'object' ? range[end] : Number.NaN));
    // One T07 and two T03.
    const mean = ([one = 0, two = 0]: readonly number[]) => (one + 2 * two) / 3;

    expect(rowOf(records, 'J03', 'drain_days').range).toEqual({ from: mean(ends('from')), to: mean(ends('to')) });
    expect(rowOf(records, 'J03', 'drainage_need').range).toBeUndefined();
  });

  test('plants lost and the drain interval are asked for after the handover', () => {
    const { after } = jobTook(derive(records, DEMO_DAY), workedJob(records, { id: 'J03' }, DEMO_DAY));
    expect(after.map(({ line, unit }) => [line, unit])).toEqual([
      [PLANTS_LOST, 'each'],
      ['drain_days', 'd'],
    ]);
  });
});

describe('houseLessons', () => {
  const lessons = houseLessons(derive(records, DEMO_DAY), { recipe: 'H1', reference: 'T05' });

  test('five jobs took 13.7 min where 11.41 were planned: 1.2 times the rule is offered', () => {
    // 3 + 0.9 x 9.345 L of T05 = 11.41; 13.7 / 11.41 = 1.2007, three digits kept.
    expect(lessons.map(({ line, jobs, old, proposed }) => [line, jobs.length, old, proposed])).toEqual([
      ['drainage_work', 5, '3 min + 0.9 min/L * drainage_placed', '1.2 * (3 min + 0.9 min/L * drainage_placed)'],
    ]);
  });

  test('its effect on the reference size stands beside it', () => {
    const [lesson] = lessons;
    expect([lesson?.effect?.before?.toFixed(2), lesson?.effect?.after?.toFixed(2)]).toEqual(['11.41', '13.69']);
  });
});

describe('plantLesson', () => {
  const lost = [1, 2, 0, 4, 1].map((value, at): Actual => ({
    id: `lost-${at}`,
    job: `J${String(at + 6).padStart(2, '0')}`,
    line: PLANTS_LOST,
    value,
    unit: 'each',
    on: `2026-11-0${at + 1}`,
    note: '',
  }));
  const measured = (count: number): Records => ({
    ...records,
    actual: new Map(lost.slice(0, count).map((each) => [each.id, each])),
  });

  test('of 16 plants each, one lost at the median is 6.3 %', () => {
    expect(plantLesson(derive(measured(5), DEMO_DAY))).toMatchObject({ median: 0.063, old: 0, proposed: 0.063 });
  });

  test('four jobs are too few to offer anything', () => {
    expect(plantLesson(derive(measured(4), DEMO_DAY))?.proposed).toBeUndefined();
    expect(plantLesson(derive(measured(0), DEMO_DAY))).toBeUndefined();
  });
});
