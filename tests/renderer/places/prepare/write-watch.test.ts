import { describe, expect, test } from 'vitest';
import { keepWatch, keptWatch, type SignedWatch } from '#renderer/places/prepare/write-watch.ts';
import { watchReport } from '#shared-calc/prepare/watch.ts';
import { readWatchLog } from '#shared-calc/prepare/watch-log.ts';
import { applyChange } from '#shared-calc/records/change.ts';
import { busyBook } from './busy-book.ts';

const records = busyBook();
const text = '14:30   24.5 85\n\n02:00 21 90\r\n14:30 26 80';
const log = readWatchLog(text);
if (!log.ok) throw new Error(JSON.stringify(log.fault));
const report = watchReport(log.value, { lowestC: 18, highestC: 27, driest: 75, dampest: 95 });
const watch: SignedWatch = { job: 'J02', size: 'J02-T05', on: '2027-04-09', by: 'Ottoline', report, text };

describe('keepWatch', () => {
  const done = keepWatch(records, watch);
  if (!done.ok) throw new Error(done.fault);
  const after = applyChange(records, done.value);

  test('maximum, minimum and hours are kept with the size, signed', () => {
    const kept = [...after.actual.values()].filter(({ size }) => size === 'J02-T05');
    expect(Object.fromEntries(kept.map(({ line, value, unit }) => [line, `${value} ${unit}`]))).toEqual({
      watch_hours: '24 h',
      watch_highest: '26 degC',
      watch_lowest: '21 degC',
      watch_dampest: '90 %',
      watch_driest: '80 %',
    });
  });

  test('the readings come back as they were, without their empty rows', () => {
    expect(keptWatch(after, 'J02-T05')).toEqual({
      on: '2027-04-09',
      by: 'Ottoline',
      text: '14:30 24.5 85\n02:00 21 90\n14:30 26 80',
    });
  });

  test('a second watch replaces the first', () => {
    const again = keepWatch(after, { ...watch, by: 'Fitter' });
    expect(again.ok && keptWatch(applyChange(after, again.value), 'J02-T05')?.by).toBe('Fitter');
  });

  test('nobody signs: it is refused', () => {
    expect(keepWatch(records, { ...watch, by: ' ' })).toEqual({ ok: false, fault: 'Say who signs the readings.' });
  });

  test('72 hours with a reading each hour can be kept, every minute cannot', () => {
    const hourly = Array.from({ length: 73 }, (_, hour) => `${hour} 24.5 85.5`).join('\n');
    const byMinute = Array.from({ length: 1440 }, (_, minute) => `${minute / 60} 24.5 85.5`).join('\n');
    expect([
      keepWatch(records, { ...watch, text: hourly }).ok,
      keepWatch(records, { ...watch, text: byMinute }),
    ]).toEqual([true, { ok: false, fault: 'Too many readings to keep: one an hour is enough. Take some out.' }]);
  });
});
