import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { animalsInPlan, sayWatch, watchReport } from '#shared-calc/prepare/watch.ts';
import type { WatchReading } from '#shared-calc/prepare/watch-log.ts';

const band = { lowestC: 18, highestC: 27, driest: 75, dampest: 95 };

function hourly(...readings: readonly (readonly [hour: number, degC: number, humidity: number])[]) {
  return readings.map(([hour, degC, humidity]): WatchReading => ({ hour, degC, humidity }));
}

describe('watchReport', () => {
  test('most, least, when, and the share of the time within the band', () => {
    // 23 to 28 over 10 h is over 27 for the last 2 h; back to 23 over 10 h, for the first 2.
    const readings = hourly([0, 23, 80], [10, 28, 80], [20, 23, 70], [40, 23, 70]);
    expect(watchReport(readings, band)).toEqual({
      hours: 40,
      temperature: { least: 23, most: 28, mostAt: 10, within: 0.9 },
      humidity: { least: 70, most: 80, mostAt: 0, within: expect.closeTo(15 / 40, 12) as number },
    });
  });

  test('a wider band never holds less', () => {
    const reading = fc.record({
      degC: fc.double({ min: 10, max: 35, noNaN: true }),
      humidity: fc.double({ min: 0, max: 100, noNaN: true }),
    });
    fc.assert(
      fc.property(
        fc.array(reading, { minLength: 2, maxLength: 10 }),
        fc.double({ min: 0, max: 5, noNaN: true }),
        (some, wider) => {
          const readings = some.map((each, hour): WatchReading => ({ hour, ...each }));
          const within = (more: number) =>
            watchReport(readings, { ...band, lowestC: band.lowestC - more, highestC: band.highestC + more }).temperature
              .within;
          expect(within(wider)).toBeGreaterThanOrEqual(within(0) - 1e-9);
        },
      ),
    );
  });
});

describe('sayWatch', () => {
  const decides = 'An experienced keeper or vet decides whether animals go in.';

  test('two days within the band are told as figures, and the keeper decides', () => {
    const report = watchReport(hourly([0, 22, 80], [24, 25.5, 90], [48, 22, 80]), band);
    expect(sayWatch(report, band)).toEqual([
      'Watched 48.0 h: 22.0 to 25.5 degC, within 18 to 27 for 100 % of the time; humidity 80.0 to 90.0 %, within 75 to 95 for 100 %.',
      decides,
    ]);
  });

  test('a short watch, a hot noon, a cold night and dry air are each said', () => {
    const report = watchReport(hourly([0, 17, 80], [10, 28, 60]), band);
    expect(sayWatch(report, band).slice(1)).toEqual([
      'Too short: 24 to 72 h with the lamps on are wanted first.',
      'Over 27 degC after 10.0 h: keep animals out, and look for sun, lamps, heating.',
      'Below 18 degC: keep animals out, and look at the room at night.',
      'The humidity left the band: look at mist and vent strip.',
      decides,
    ]);
  });

  test('whatever is read, it never says that a tank is safe', () => {
    const reading = fc.record({
      degC: fc.double({ min: 0, max: 40, noNaN: true }),
      humidity: fc.double({ min: 0, max: 100, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(reading, { minLength: 2, maxLength: 6 }), (some) => {
        const readings = some.map((each, hour): WatchReading => ({ hour: hour * 12, ...each }));
        const says = sayWatch(watchReport(readings, band), band);
        expect(says.join(' ')).not.toMatch(/safe|guarantee|fit for|sterile/i);
        expect(says.at(-1)).toBe(decides);
      }),
    );
  });
});

describe('animalsInPlan', () => {
  test('animals a week after the build are looked at on days 1, 3, 7, 14, 21 and 28', () => {
    expect(animalsInPlan('2027-04-07', 7)).toEqual([
      { day: 1, date: '2027-04-15' },
      { day: 3, date: '2027-04-17' },
      { day: 7, date: '2027-04-21' },
      { day: 14, date: '2027-04-28' },
      { day: 21, date: '2027-05-05' },
      { day: 28, date: '2027-05-12' },
    ]);
  });

  test('after 14 days of settling-in none is wanted', () => {
    expect([animalsInPlan('2027-04-07', 14), animalsInPlan('2027-04-07', 13).length]).toEqual([[], 6]);
  });
});
