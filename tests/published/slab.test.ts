import { describe, expect, test } from 'vitest';
import { comeUpMinutes } from '#shared-calc/trade/heat/come-up-time.ts';

/*
 * The heat-up time is the one-term answer for a body in a medium of one temperature, written with f and j: for a slab of
 * half thickness L, f = ln 10 L^2 / (zeta^2 alpha) and j = C1 at its middle, C1 cos zeta at its face. zeta tan zeta = Bi;
 * C1 = 4 sin zeta / (2 zeta + sin 2 zeta), an equation of every textbook of heat transfer. The times are worked from it
 * here; what books print of the same problems is from memory, and read from charts.
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

describe('annealing plates: when the middle reaches 550 degC, worked from the equation', () => {
  const plate: Plate = { half: 0.05, conducts: 45, density: 7800, heat: 500, film: 500 };

  test('100 mm thick, 300 degC into 700: 489.9 s', () => {
    expect(Math.abs(secondsToMiddle(plate, [300, 700, 550]) / 489.9 - 1)).toBeLessThan(1e-3);
  });

  test('200 degC into 800 with a weaker film: 857.0 s, within 1 % of the 861 s of a textbook, from memory', () => {
    const sister: Plate = { half: 0.05, conducts: 48, density: 7830, heat: 550, film: 250 };
    const seconds = secondsToMiddle(sister, [200, 800, 550]);
    expect(Math.abs(seconds / 857 - 1)).toBeLessThan(1e-3);
    expect(Math.abs(seconds / 861 - 1)).toBeLessThan(1e-2);
  });
});

// Data of Cengel problem 4-36, seen in a copy of the solution; its 445 degC is from memory.
describe('brass plates 3 cm thick, 25 degC into 700, 10 min', () => {
  const [half, conducts, spread, film] = [0.015, 110, 33.9e-6, 80];
  const zeta = zetaOf((film * half) / conducts);

  test('the face is at 448.2 degC after ten minutes, within 4 K of the textbook, from memory', () => {
    const tenfold = (Math.LN10 * half ** 2) / (zeta ** 2 * spread) / 60;
    const face = { tenfold, lag: firstTerm(zeta) * Math.cos(zeta), heat: 700, start: 25 };
    expect(comeUpMinutes({ ...face, target: 448.2 })).toBeCloseTo(10, 2);
    expect(Number(comeUpMinutes({ ...face, target: 444.2 }))).toBeLessThan(10);
    expect(Number(comeUpMinutes({ ...face, target: 449.2 }))).toBeGreaterThan(10);
  });
});
