import { describe, expect, test } from 'vitest';
import { PLANTS_LOST } from '#shared-calc/derive/job-took.ts';
import { savedWatch } from '#shared-calc/prepare/saved-watch.ts';
import type { Actual, Records } from '#shared-calc/records/records.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { busyBook } from '#tests/renderer/places/prepare/busy-book.ts';
import { DEMO_DAY, demoRecords } from '#tests/demo-bench.ts';
import { done, refused } from './do-act.ts';

const records = busyBook();
const readings = '14:30   24.5 85\n\n02:00 21 90\r\n14:30 26 80';
const watch = { job: 'J02', column: 'T05', readings, by: 'Ottoline' };

describe('keepWatch', () => {
  const after = done(records, 'keepWatch', watch).records;

  test('maximum, minimum and hours are kept with the size, signed', () => {
    const actuals = [...after.actual.values()].filter(({ size }) => size === 'J02-T05');
    expect(Object.fromEntries(actuals.map(({ line, value, unit }) => [line, `${value} ${unit}`]))).toEqual({
      watch_hours: '24 h',
      watch_highest: '26 degC',
      watch_lowest: '21 degC',
      watch_dampest: '90 %',
      watch_driest: '80 %',
    });
  });

  test('the readings come back as they were, without their empty rows', () => {
    expect(savedWatch(after, 'J02-T05')).toEqual({
      on: DEMO_DAY,
      by: 'Ottoline',
      text: '14:30 24.5 85\n02:00 21 90\n14:30 26 80',
    });
  });

  test('a second watch replaces the first', () => {
    expect(savedWatch(done(after, 'keepWatch', { ...watch, by: 'Fitter' }).records, 'J02-T05')?.by).toBe('Fitter');
  });

  test('72 hours with a reading each hour can be kept; every minute, nobody, and what is no reading cannot', () => {
    const hourly = Array.from({ length: 73 }, (_, hour) => `${hour} 24.5 85.5`).join('\n');
    const byMinute = Array.from({ length: 1440 }, (_, minute) => `${minute / 60} 24.5 85.5`).join('\n');
    expect(
      [{ readings: hourly }, { readings: byMinute }, { by: ' ' }, { readings: '0 24 85\n1 warm 85' }].map((other) =>
        refused(records, 'keepWatch', { ...watch, ...other }),
      ),
    ).toEqual([
      '',
      'Too many readings to keep: one an hour is enough. Take some out.',
      'Say who signs the readings.',
      'Row 2: "1 warm 85" is not time, degC and humidity, as 14:30 24.5 85.',
    ]);
  });
});

describe('teachFromWatch', () => {
  const readAt = (rows: string) =>
    done(demoRecords(), 'keepWatch', { job: 'J01', column: 'T07', readings: rows, by: 'Ottoline' }).records;
  const teach = { job: 'J01', column: 'T07', for: 'house' } as const;
  /** The air of the house as a watch would have taught it, at the figure it has. */
  const withAirTaught = (book: Records): Records => {
    const line = book.line.get('H1.air_factor');
    return {
      ...book,
      line: new Map([...book.line, ...(line ? [[line.id, { ...line, least: 0.7, most: 1.4 }] as const] : [])]),
    };
  };

  // T07 works 4.307 K of warming, 1.501 air changes, 0.2706 m3/h of room air and 1.3208 m3/h of damp.
  test.each([
    [
      '5.4 K at the end of the light',
      '0 21 60\n12 26.4 80 21 45',
      { factor: 'warm' },
      'warm_factor',
      [1.25, 1.06, 1.44],
    ],
    [
      'a rest of 80 % before misting',
      '0 25 90 21 45\n12 25 80 21 45',
      { factor: 'damp' },
      'damp_factor',
      [0.453, 0.317, 0.634],
    ],
    [
      '49 mL a day that left at 90 %',
      '0 24 90 21 45\n24 24 90 21 45',
      { factor: 'air', lostMlPerDay: 49.06 },
      'air_factor',
      [0.666, 0.466, 0.932],
    ],
  ] as const)('%s teach the house', (...[, rows, asked, name, ends]) => {
    const book = withAirTaught(readAt(rows));
    const line = done(book, 'teachFromWatch', { ...teach, ...asked }).records.line.get(`H1.${name}`);
    expect([line?.text, line?.least, line?.most]).toEqual([String(ends[0]), ends[1], ends[2]]);
    expect([line?.source, line?.sourceNote]).toEqual(['measured', `${DEMO_DAY}, watch of T07 in J01`]);
  });

  test('this tank only has it as a value of its own, and the house stays', () => {
    const asked = { ...teach, factor: 'warm', for: 'tank' } as const;
    const { records: then } = done(readAt('0 21 60\n12 26.4 80 21 45'), 'teachFromWatch', asked);
    expect([...then.localValue.values()].map(({ size, line, text, note }) => [size, line, text, note])).toEqual([
      ['J01-T07', 'warm_factor', '1.25 (1.06 to 1.44)', `measured by the watch of T07, ${DEMO_DAY}`],
    ]);
    expect(then.line.get('H1.warm_factor')?.text).toBe('1');
  });

  test.each([
    ['no watch kept', '', { factor: 'warm' }, 'No watch of T07 is kept: keep its readings first.'],
    [
      'a room nobody read',
      '0 21 60\n12 26.4 80',
      { factor: 'warm' },
      'No reading has the room beside it: write its degC and % behind those of the tank.',
    ],
    [
      'a tank that warms by 25 K',
      '0 21 60\n12 46 80 21 45',
      { factor: 'warm' },
      'One of the readings does not fit; look at the hygrometer first.',
    ],
    [
      'a tank drier than its room',
      '0 21 40 21 60\n12 21 40 21 60',
      { factor: 'damp' },
      'One of the readings does not fit; look at the hygrometer first.',
    ],
    [
      'air that rests full',
      '0 25 99 21 45\n12 25 96 21 45',
      { factor: 'damp' },
      'The driest reading is 96 %: too near full to tell.',
    ],
    [
      'water nobody measured',
      '0 24 90 21 45\n24 24 90 21 45',
      { factor: 'air' },
      'Say how much water left in a day: what was put in, less what was drained.',
    ],
  ] as const)('%s is refused', (_, rows, asked, says) => {
    const book = rows === '' ? demoRecords() : withAirTaught(readAt(rows));
    expect(refused(book, 'teachFromWatch', { ...teach, ...asked })).toBe(says);
  });
});

describe('teachFromWatch, the air first', () => {
  const asked = { job: 'J01', column: 'T07', for: 'house' } as const;
  const rows = '0 25 90 21 45\n12 25 80 21 45';

  test('damp is taught once the air is, and by the air that was taught', () => {
    const watched = done(demoRecords(), 'keepWatch', {
      job: 'J01',
      column: 'T07',
      readings: rows,
      by: 'Ottoline',
    }).records;
    expect(refused(watched, 'teachFromWatch', { ...asked, factor: 'damp' })).toBe(
      'Teach the air factor first, by the water lost in a day: how damp a tank is hangs on its air.',
    );
    const aired = done(watched, 'teachFromWatch', { ...asked, factor: 'air', lostMlPerDay: 49.06 }).records;
    const damped = done(aired, 'teachFromWatch', { ...asked, factor: 'damp' }).records;
    const [air, damp] = ['air_factor', 'damp_factor'].map((name) => Number(damped.line.get(`H1.${name}`)?.text));
    // 0.453 at the air the house began with.
    expect((damp ?? 0) / (air ?? 0)).toBeCloseTo(0.453, 2);
  });
});

describe('writeTook', () => {
  test('a figure is written down, over, and taken back', () => {
    const need = { job: 'J03', line: 'drainage_need' };
    const stored = ({ actual }: Records) =>
      [...actual.values()].find(({ job, line }) => job === 'J03' && line === need.line)?.value;
    const once = done(records, 'writeTook', { ...need, value: 31 });
    const twice = done(once.records, 'writeTook', { ...need, value: 30.28 });
    const back = done(twice.records, 'writeTook', { ...need, value: null });
    expect([once, twice, back].map((each) => [each.label, stored(each.records)])).toEqual([
      ['J03: expanded clay, loose took 31 L', 31],
      ['J03: expanded clay, loose took 30.28 L', 30.28],
      ['J03: expanded clay, loose not written down', undefined],
    ]);
  });

  test('plants lost are counted beside the lines of the recipe, and no other name is', () => {
    const { label, records: then } = done(records, 'writeTook', { job: 'J03', line: PLANTS_LOST, value: 2 });
    expect([label, then.actual.get('J03.plants_lost')?.unit]).toEqual(['J03: plants lost took 2 each', 'each']);
    expect(refused(records, 'writeTook', { job: 'J03', line: 'no_line', value: 2 })).toBe('Nothing called no_line.');
  });
});

describe('teachHouse', () => {
  test('a line takes what the last five jobs measured, and no other line changes', () => {
    const then = done(records, 'teachHouse', { recipe: 'H1', line: 'drainage_work' }).records;
    const changed = [...then.line.values()].filter((line) => records.line.get(line.id) !== line);
    expect(
      changed.map(({ recipe, name, text, source, sourceNote }) => [recipe, name, text, source, sourceNote]),
    ).toEqual([
      [
        'H1',
        'drainage_work',
        '1.2 * (3 min + 0.9 min/L * drainage_placed)',
        'measured',
        `${DEMO_DAY}, the last 5 jobs`,
      ],
    ]);
  });

  test('a line that was not measured five times stays', () => {
    expect(refused(records, 'teachHouse', { recipe: 'H1', line: 'litter' })).toBe(
      'The last jobs offer nothing for litter depth: five must have measured it.',
    );
  });
});

describe('teachPlantLoss', () => {
  const lost = [1, 2, 0, 4, 1].map((value, at): Actual => ({
    id: `lost-${at}`,
    job: `J${String(at + 6).padStart(2, '0')}`,
    line: PLANTS_LOST,
    value,
    unit: 'each',
    on: `2026-11-0${at + 1}`,
    note: '',
  }));

  test('the workshop reckons with the median of five jobs', () => {
    const measured = { ...records, actual: new Map(lost.map((each) => [each.id, each])) };
    const { label, records: then } = done(measured, 'teachPlantLoss', {});
    expect([label, workshopOf(then).plantLossShare]).toEqual(['house taught: 6.3 % for plants that fail', 0.063]);
    expect(refused(records, 'teachPlantLoss', {})).toMatch(/^The last jobs offer nothing for plants that fail/);
  });
});
