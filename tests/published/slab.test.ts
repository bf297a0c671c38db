import { describe, expect, test } from 'vitest';
import { comeUpMinutes } from '#shared-calc/trade/heat/come-up-time.ts';

/*
 * The heat-up time is the one-term answer for a body in a medium of one temperature, written with f and j: for a slab of
 * half thickness L, f = ln 10 L^2 / (zeta^2 alpha) and j = C1 at its middle, C1 cos zeta at its face. Equation form as in
 * Incropera/DeWitt Table 5.1 and Cengel Table 4-1: zeta tan zeta = Bi; C1 = 4 sin zeta / (2 zeta + sin 2 zeta).
 */

/** By bisection: zeta tan zeta only rises up to pi/2. */
function zetaOf(biot: number): number {
  let [low, high] = [0, Math.PI / 2];
  for (let cut = 0; cut < 60; cut += 1) {
    const middle = (low + high) / 2;
    if (middle * Math.tan(middle) < biot) low = middle;
    else high = middle;
  }
  return low;
}

function firstTerm(zeta: number): number {
  return (4 * Math.sin(zeta)) / (2 * zeta + Math.sin(2 * zeta));
}

describe('first term of a slab, textbook tables to 4 decimals, within 1e-4', () => {
  test.each([
    [0.01, 0.0998, 1.0017],
    [0.02, 0.141, 1.0033],
    [0.05, 0.2218, 1.0082],
    [0.1, 0.3111, 1.0161],
    [0.5, 0.6533, 1.0701],
    [1, 0.8603, 1.1191],
    [5, 1.3138, 1.2403],
    [10, 1.4289, 1.262],
    [50, 1.54, 1.2727],
    [100, 1.5552, 1.2731],
  ])('Bi %d: zeta %d, C1 %d', (biot, zeta, first) => {
    const found = zetaOf(biot);
    expect(Math.abs(found - zeta)).toBeLessThan(1e-4);
    expect(Math.abs(firstTerm(found) - first)).toBeLessThan(1e-4);
  });

  test('however fast the face is heated, the middle of a slab lags by 4/pi and no more', () => {
    expect(firstTerm(zetaOf(1e9))).toBeCloseTo(4 / Math.PI, 6);
  });
});

interface Plate {
  /** m, half of it. */
  readonly half: number;
  /** W/m/K, kg/m3, J/kg/K and W/m2/K. */
  readonly conducts: number;
  readonly density: number;
  readonly heat: number;
  readonly film: number;
}

function secondsToMiddle(
  { half, conducts, density, heat, film }: Plate,
  temperatures: readonly [number, number, number],
) {
  const zeta = zetaOf((film * half) / conducts);
  const spread = conducts / (density * heat);
  const tenfold = (Math.LN10 * half ** 2) / (zeta ** 2 * spread) / 60;
  const [start, medium, target] = temperatures;
  return Number(comeUpMinutes({ tenfold, lag: firstTerm(zeta), heat: medium, start, target })) * 60;
}

describe('annealing plates: when the middle reaches 550 degC, within 1 %', () => {
  const plate: Plate = { half: 0.05, conducts: 45, density: 7800, heat: 500, film: 500 };

  // problem text of a heat transfer course; the time worked from the stated equation
  test('100 mm thick, 300 degC into 700: 489.9 s', () => {
    expect(Math.abs(secondsToMiddle(plate, [300, 700, 550]) / 489.9 - 1)).toBeLessThan(1e-3);
  });

  // its sister: worked 857.0 s, the book prints 861
  test('200 degC into 800 with a weaker film: 857.0 s, the book 861', () => {
    const sister: Plate = { half: 0.05, conducts: 48, density: 7830, heat: 550, film: 250 };
    const seconds = secondsToMiddle(sister, [200, 800, 550]);
    expect(Math.abs(seconds / 857 - 1)).toBeLessThan(1e-3);
    expect(Math.abs(seconds / 861 - 1)).toBeLessThan(1e-2);
  });
});

describe('Cengel problem 4-36, brass plates 3 cm thick, 25 degC into 700, 10 min', () => {
  const [half, conducts, spread, film] = [0.015, 110, 33.9e-6, 80];
  const zeta = zetaOf((film * half) / conducts);

  test('the printed constants: Bi 0.0109, zeta 0.1039, A1 1.0018, within 0.0005', () => {
    expect((film * half) / conducts).toBeCloseTo(0.0109, 4);
    expect(Math.abs(zeta - 0.1039)).toBeLessThan(5e-4);
    expect(Math.abs(firstTerm(zeta) - 1.0018)).toBeLessThan(5e-4);
  });

  test('the face at 448.2 degC, the book 445, is reached after ten minutes', () => {
    const tenfold = (Math.LN10 * half ** 2) / (zeta ** 2 * spread) / 60;
    const face = { tenfold, lag: firstTerm(zeta) * Math.cos(zeta), heat: 700, start: 25 };
    expect(comeUpMinutes({ ...face, target: 448.2 })).toBeCloseTo(10, 2);
    // 4 K of the book's figure
    expect(Number(comeUpMinutes({ ...face, target: 444.2 }))).toBeLessThan(10);
    expect(Number(comeUpMinutes({ ...face, target: 449.2 }))).toBeGreaterThan(10);
  });
});
