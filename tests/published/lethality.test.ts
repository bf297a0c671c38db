import { describe, expect, test } from 'vitest';
import { holdTime } from '#shared-calc/trade/heat/hold-time.ts';
import { killRate } from '#shared-calc/trade/heat/kill-rate.ts';
import { killTotal } from '#shared-calc/trade/heat/kill-total.ts';
import { heatTargets } from '#shared-calc/trade/heat-targets.ts';

const { sterileSteam } = heatTargets;

describe('lethality, FDA proposed rule 1976 section 212.3: 121 degC, z 10', () => {
  test.each([
    { degC: 121, kill: 15 },
    { degC: 111, kill: 1.5 },
    { degC: 124, kill: 29.93 },
  ])('15 min at $degC degC are worth $kill min, within 0.01', ({ degC, kill }) => {
    expect(Math.abs(held15(degC, 121) - kill)).toBeLessThan(0.01);
  });

  // 121, 121.1 and 121.11 are all in use: 2.3 % apart
  test.each([
    { degC: 121, kill: 14.66 },
    { degC: 111, kill: 1.466 },
    { degC: 124, kill: 29.25 },
  ])('counted at 121.1 degC the same 15 min at $degC are $kill min', ({ degC, kill }) => {
    expect(Math.abs(held15(degC, 121.1) / kill - 1)).toBeLessThan(4e-4);
  });

  test('the reference 121.11 degC (250 degF) is 2.3 to 2.6 % from 121', () => {
    expect(held15(121, 121) / held15(121, 121.1) - 1).toBeCloseTo(0.0233, 4);
    expect(held15(121, 121) / held15(121, 121.11) - 1).toBeCloseTo(0.0257, 4);
  });
});

describe('lethal rates, worked from the definition, 121.1 degC, z 10', () => {
  test.each([
    [100, 0.00776, 5],
    [105, 0.02455, 5],
    [110, 0.07762, 5],
    [115, 0.24547, 5],
    [118, 0.48978, 5],
    [120, 0.77625, 5],
    [121, 0.97724, 5],
    [125, 2.4547, 4],
    [130, 7.7625, 4],
    [132, 12.303, 3],
    [134, 19.498, 3],
  ])('a minute at %d degC is worth %d', (degC, rate, digits) => {
    expect(killRate.compute([degC, 121.1, 10])).toBeCloseTo(rate, digits);
  });

  test('of a million spores with D121 of 2 min, 15 min at 121 leave 0.0316', () => {
    const cuts = held15(121, 121) / 2;
    expect([cuts, 1e6 / 10 ** cuts]).toEqual([expect.closeTo(7.5, 9), expect.closeTo(0.0316, 4)]);
  });

  test('and 7.5 cuts of D121 2 min are held 15 min', () => {
    expect(holdTime.compute([7.5, 2, 121, 10, 121])).toBeCloseTo(15, 9);
  });
});

describe('CDC Guideline for Disinfection and Sterilization in Healthcare Facilities 2008, steam section, Table 7', () => {
  test('wrapped goods: 30 min at 121 degC (250 degF), gravity displacement', () => {
    expect([sterileSteam.minutes, sterileSteam.scale.reference]).toEqual([30, 121]);
  });

  test('4 min at 132 degC, the other row of that table, are worth more than those 30 min', () => {
    expect(4 * Number(killRate.compute([132, 121, 10]))).toBeGreaterThan(30);
  });
});

function held15(degC: number, reference: number): number {
  const level = [
    [0, degC],
    [15, degC],
  ] as const;
  return Number(killTotal(level, { reference, step: 10 }));
}
