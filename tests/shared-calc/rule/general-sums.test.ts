import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { generalSums, type Scalar } from '#shared-calc/rule/general-sums.ts';

function work(name: string, ...given: readonly Scalar[]) {
  return generalSums.get(name)?.(given);
}

describe('generalSums', () => {
  test.each([
    ['round', [1.1 * 1.1 * 100, 0], 121],
    ['roundup', [1.1 * 1.1 * 100, 0], 121],
    ['roundup', [3.0000000001], 3],
    ['rounddown', [2.9999999999], 3],
    ['floor', [0.3 / 0.1], 3],
    ['ceiling', [0.7 / 0.1], 7],
    ['int', [2.9999999999], 3],
    ['int', [-1.0000000001], -1],
    ['int', [-1.5], -2],
    ['roundup', [2.001, 2], 2.01],
    ['roundup', [2.0000001], 3],
    ['round', [1.005, 2], 1.01],
    ['round', [2.675, 2], 2.68],
    ['round', [-0.5], -1],
    ['round', [0.49999], 0],
    ['round', [1e20, 2], 1e20],
    ['round', [1e300, -2], 1e300],
    ['round', [3, 400], 3],
    ['round', [3, -400], 0],
    ['round', [15, -1], 20],
    ['round', [2.345, 2.9], 2.35],
  ] as const)('takes binary noise off before it rounds: %s of %j is %d', (name, given, figure) => {
    expect(work(name, ...given)).toBe(figure);
  });

  test.each([
    ['ceiling', [2.5], 3],
    ['ceiling', [-2.5], -2],
    ['ceiling', [-2.5, -2], -2],
    ['ceiling', [-2.5, -2, 1], -4],
    ['ceiling', [7, 0], 0],
    ['floor', [2.5], 2],
    ['floor', [-2.5], -3],
    ['floor', [7, 2], 6],
    ['floor', [0, -3], 0],
    ['mod', [10, 3], 1],
    ['mod', [-10, 3], 2],
    ['mod', [10, -3], -2],
    ['mod', [1.2, 0.4], 0],
    ['mod', [0.25, 1], 0.25],
    ['mod', [1e-13, 1], 1e-13],
    ['power', [2, -1], 0.5],
    ['power', [-2, 3], -8],
    ['sqrt', [9], 3],
    ['ln', [1], 0],
    ['exp', [0], 1],
    ['abs', [-3], 3],
    ['min', [3, 1, 2], 1],
    ['max', [3, 1, 2], 3],
    ['sum', [1, 2, 3], 6],
    ['clamp', [12, 20, 50], 20],
    ['clamp', [60, 20, 50], 50],
    ['clamp', [30, 20, 50], 30],
    ['clamp', [1, 0.3, 0.1 + 0.2], 0.3],
    ['round_to', [0.0405, 0.005], 0.04],
    ['round_to', [0.0425, 0.005], 0.045],
    ['round_to', [-42.5, 5], -45],
    ['round_to', [2, 5], 0],
  ] as const)('%s of %j is %d', (name, given, figure) => {
    expect(work(name, ...given)).toBeCloseTo(figure, 12);
  });

  test.each([
    ['same', [0.1 + 0.2, 0.3], true],
    ['same', [1, 1 + 1e-11], false],
    ['same', [0, 1e-300], false],
    ['differs', [0.1 + 0.2, 0.3], false],
    ['less', [0.3, 0.1 + 0.2], false],
    ['less', [0.3, 0.4], true],
    ['at_most', [0.1 + 0.2, 0.3], true],
    ['at_most', [0.4, 0.3], false],
    ['more', [0.1 + 0.2, 0.3], false],
    ['more', [0.4, 0.3], true],
    ['at_least', [0.3, 0.1 + 0.2], true],
    ['at_least', [0.3, 0.4], false],
    ['same', ['full', 'full'], true],
    ['same', ['full', 'Full'], false],
    ['differs', ['full', 'show'], true],
    ['same', [true, true], true],
    ['same', ['1', 1], false],
  ] as const)('%s of %j is %s, within 1e-12 of the greater figure', (name, given, holds) => {
    expect(work(name, ...given)).toBe(holds);
  });

  test.each([
    ['mod', [10, 0]],
    ['sqrt', [-1]],
    ['ln', [0]],
    ['ln', [-1]],
    ['power', [0, -1]],
    ['power', [-2, 0.5]],
    ['clamp', [1, 5, 2]],
    ['round_to', [1, 0]],
    ['round_to', [1, -5]],
    ['ceiling', [2, -3]],
    ['floor', [-2, 3]],
    ['less', ['a', 1]],
    ['round', [true]],
  ] as const)('refuses %s of %j in a sentence', (name, given) => {
    const answer = work(name, ...given);
    expect(typeof answer === 'object' ? answer.refused : answer).toMatch(/^[A-Z].*\.$/);
  });

  const figure = fc.double({ min: -1e6, max: 1e6, noNaN: true });

  test('rounding up, down and to the nearest are never more than one apart, and agree on whole figures', () => {
    fc.assert(
      fc.property(figure, fc.integer({ min: -3, max: 4 }), (each, digits) => {
        const [down = 0, near = 0, up = 0] = ['rounddown', 'round', 'roundup'].map((name) =>
          Math.abs(Number(work(name, each, digits))),
        );
        const step = 10 ** -digits * 1.000001;
        expect([down <= near, near <= up, up - down <= step]).toEqual([true, true, true]);
      }),
    );
  });

  test('the rest of a division is between nothing and the step, and of its sign', () => {
    fc.assert(
      fc.property(
        figure,
        figure.filter((by) => Math.abs(by) > 1e-3),
        (each, by) => {
          const rest = Number(work('mod', each, by)) / by;
          expect(rest > -1e-9 && rest < 1 + 1e-9).toBe(true);
        },
      ),
    );
  });

  test('of two figures exactly one holds: less, the same, more', () => {
    fc.assert(
      fc.property(figure, figure, (a, b) => {
        expect(['less', 'same', 'more'].filter((name) => work(name, a, b) === true).length).toBe(1);
      }),
    );
  });
});
