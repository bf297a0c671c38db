import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { timeWithin, type Reading } from '#shared-calc/prepare/straight-lines.ts';

describe('timeWithin', () => {
  test.each<[string, readonly Reading[], number]>([
    [
      'a climb from 10 to 30 is within 15 to 25 for half its time',
      [
        [0, 10],
        [8, 30],
      ],
      4,
    ],
    [
      'a level line on the edge is within',
      [
        [0, 25],
        [3, 25],
      ],
      3,
    ],
    [
      'a level line outside is not',
      [
        [0, 26],
        [3, 26],
      ],
      0,
    ],
    ['one reading is no time', [[0, 20]], 0],
    [
      'a line that touches the band in one point spends no time there',
      [
        [0, 25],
        [2, 35],
      ],
      0,
    ],
  ])('%s', (_what, readings, hours) => {
    expect(timeWithin(readings, 15, 25)).toBeCloseTo(hours, 12);
  });

  test('below, within and above make up the whole time of a line that is never level', () => {
    const readings = fc.uniqueArray(fc.double({ min: -50, max: 150, noNaN: true }), { minLength: 2, maxLength: 12 });
    fc.assert(
      fc.property(readings, (figures) => {
        const line = figures.map((figure, at): Reading => [at, figure]);
        const parts = [timeWithin(line, -Infinity, 15), timeWithin(line, 15, 25), timeWithin(line, 25, Infinity)];
        expect(parts.reduce((sum, each) => sum + each)).toBeCloseTo(figures.length - 1, 9);
      }),
    );
  });
});
