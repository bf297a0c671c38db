import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { coreHeat, readProbeLog, sayCoreHeat, type LoggedTreatment } from '#shared-calc/prepare/probe-log.ts';
import type { CoreReading } from '#shared-calc/trade/heat/kill-total.ts';

const log: readonly CoreReading[] = [
  [0, 20],
  [30, 118.8],
  [81, 118.8],
  [100, 60],
];

describe('readProbeLog', () => {
  test.each([
    ['spaces', '0 60\n5 70.5\n10 80'],
    ['a heading and tabs', 'minutes\ttemperature\n0\t60\n5\t70.5\n10\t80\n'],
    ['commas and units', '0 min, 60 °C\r\n5 min, 70.5 °C\r\n\r\n10 min, 80 °C'],
    ['semicolons and decimal commas', '0;60,0\n5;70,5\n10;80,0'],
    ['commas without a space', '0,60\n5,70.5\n10,80'],
  ])('reads a log with %s', (_how, text) => {
    expect(readProbeLog(text)).toEqual({
      ok: true,
      value: [
        [0, 60],
        [5, 70.5],
        [10, 80],
      ],
    });
  });

  test('times that do not rise are refused, with the row', () => {
    expect(readProbeLog('0 60\n10 80\n10 82')).toEqual({
      ok: false,
      fault: [{ row: 3, says: 'Times must rise: 10 min comes after 10 min.' }],
    });
  });

  test('every row that cannot be read is named, and nothing is taken in', () => {
    expect(readProbeLog('0 60\nfive 70\n10\n-1 80')).toEqual({
      ok: false,
      fault: [
        { row: 2, says: '"five 70" is not minutes and degC, as 12 84.5.' },
        { row: 3, says: '"10" is not minutes and degC, as 12 84.5.' },
        { row: 4, says: '-1 min is before the start.' },
      ],
    });
  });

  test('a log of one reading is none', () => {
    expect(readProbeLog('0 60')).toMatchObject({ ok: false, fault: [{ row: 1 }] });
    expect(readProbeLog('')).toMatchObject({ ok: false, fault: [{ row: 1 }] });
  });
});

function heat(readings: readonly CoreReading[], treatment: LoggedTreatment) {
  const found = coreHeat(readings, treatment);
  if (!found.ok) throw new Error(found.fault);
  return found.value;
}

describe('coreHeat', () => {
  test('steam held 51 min at 118.8 degC is worth 30 min at 121, and its flanks count from 115 degC on', () => {
    // 51 min at 10^-0.22 is 30.73; of the climb the last 3.8 of 98.8 K count, of the fall the first 3.8 of 58.8 K.
    const found = heat(log, { way: 'steam', aim: 'sterile', moistened: false });
    const rate = 10 ** -0.22;
    const flank = (rate - 10 ** -0.6) / (0.38 * Math.LN10);
    const climb = ((30 * 3.8) / 98.8) * flank;
    const fall = ((19 * 3.8) / 58.8) * flank;
    expect(found.reached).toBeCloseTo(51 * rate + climb + fall, 9);
    expect([found.wanted, found.enough, found.hottest]).toEqual([30, true, 118.8]);
    expect(found.curve.map(({ kill }) => Number(kill.toFixed(2)))).toEqual([0, 0.46, 31.19, 31.69]);
  });

  test('a core that stays below 115 degC is never counted toward sterile, however long', () => {
    const day: readonly CoreReading[] = [
      [0, 114.9],
      [1440, 114.9],
    ];
    const found = heat(day, { way: 'steam', aim: 'sterile', moistened: false });
    expect([found.reached, found.enough]).toEqual([0, false]);
  });

  test.each([
    ['steam', true, 30, 82],
    ['steam', false, 30, 82],
    ['bake', true, 30, 60],
    ['bake', false, 30, 80],
    ['boil', false, 3, 85],
  ] as const)('clean by %s, moistened %s: %d min at %d degC and over', (way, moistened, minutes, leastC) => {
    const steady = (long: number): readonly CoreReading[] => [
      [0, leastC],
      [long, leastC],
    ];
    const treatment = { way, aim: 'clean', moistened } as const;
    expect([heat(steady(minutes), treatment).enough, heat(steady(minutes - 0.1), treatment).enough]).toEqual([
      true,
      false,
    ]);
  });

  test('a colder log is never worth more', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 20, max: 125, noNaN: true }), { minLength: 2, maxLength: 8 }),
        fc.double({ min: 0, max: 30, noNaN: true }),
        fc.constantFrom('clean' as const, 'sterile' as const),
        (temperatures, colder, aim) => {
          const at = (less: number) => temperatures.map((degC, minute): CoreReading => [minute * 5, degC - less]);
          const treatment = { way: 'steam', aim, moistened: true } as const;
          expect(heat(at(colder), treatment).reached).toBeLessThanOrEqual(heat(at(0), treatment).reached + 1e-9);
        },
      ),
    );
  });

  test('it is said without a promise, and rounded down', () => {
    const sentence = sayCoreHeat(heat(log, { way: 'bake', aim: 'clean', moistened: false }));
    expect(sentence).toBe(
      'Core up to 118.8 degC; 75.3 of 30 min (30 min at 80 degC or over, not moistened before). The core was there long enough.',
    );
  });
});
