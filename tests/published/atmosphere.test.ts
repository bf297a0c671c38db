import { describe, expect, test } from 'vitest';
import { airPressure } from '#shared-calc/trade/heat/air-pressure.ts';
import { boilingPoint } from '#shared-calc/trade/heat/boiling-point.ts';
import { killRateAt } from '#shared-calc/trade/heat/kill-rate.ts';
import { saturationPressureKpa } from '#shared-calc/trade/heat/saturation.ts';
import { steamTemp } from '#shared-calc/trade/heat/steam-temp.ts';

/** Exact by definition (NIST SP 811 App. B; foot 0.3048 m). */
const KPA_PER_PSI = 6.894757293168;
const METRES_PER_FOOT = 0.3048;

// `geometric` is the column of the US 1976 table from memory; the formula gives the same.
const rows = [
  { height: 0, pascal: 101325.0, boils: 99.974, fao: 101.3, geometric: 101325.0 },
  { height: 500, pascal: 95460.8, boils: 98.312, fao: 95.528, geometric: 95461.3 },
  { height: 1000, pascal: 89874.6, boils: 96.649, fao: 90.025, geometric: 89876.3 },
  { height: 1500, pascal: 84556.0, boils: 94.983, fao: 84.781, geometric: 84559.7 },
  { height: 2000, pascal: 79495.2, boils: 93.315, fao: 79.788, geometric: 79501.4 },
  { height: 3000, pascal: 70108.5, boils: 89.972, fao: 70.515, geometric: 70121.2 },
];

describe('standard atmosphere: ISO 2533, ICAO Doc 7488, US 1976', () => {
  test.each(rows)(
    'at $height m (geopotential) the air presses with $pascal Pa, within 0.1 Pa',
    ({ height, pascal }) => {
      expect(Math.abs(pressureAt(height) * 1000 - pascal)).toBeLessThan(0.1);
    },
  );

  test.each(rows)('$height m above the ground differs by the two definitions of height alone, under 0.02 %', (row) => {
    const geopotential = (6356766 * row.height) / (6356766 + row.height);
    expect(Math.abs(pressureAt(geopotential) * 1000 - row.geometric)).toBeLessThan(0.1);
    expect(Math.abs(pressureAt(row.height) * 1000 - row.geometric) / row.geometric).toBeLessThan(2e-4);
  });

  test.each(rows)('at $height m water boils at $boils degC, within 0.01 K', ({ height, boils }) => {
    expect(Math.abs(Number(boilingPoint.compute([height])) - boils)).toBeLessThan(0.01);
  });

  // ASHRAE Fundamentals, psychrometrics chapter, I-P form, seen second hand; printed: engineeringtoolbox.com, standard
  // atmosphere. The form gives 10.107 psia at 10,000 ft.
  test.each([
    { feet: 5000, psia: 12.228 },
    { feet: 10000, psia: 10.108 },
  ])('at $feet ft a table prints $psia psia, and the I-P form agrees within 0.005', ({ feet, psia }) => {
    const form = 14.696 * (1 - 6.8754e-6 * feet) ** 5.2559;
    expect(form).toBeCloseTo(psia, 2);
    expect(pressureAt(feet * METRES_PER_FOOT) / KPA_PER_PSI).toBeCloseTo(psia, 2);
  });
});

describe('FAO-56 eq. 7 (Allen et al. 1998) as a second formula for air pressure', () => {
  test.each(rows)(
    'at $height m it says $fao kPa, up to 0.6 % from ours as it takes 293 K and 101.3 kPa',
    ({ height, fao }) => {
      const second = 101.3 * ((293 - 0.0065 * height) / 293) ** 5.26;
      expect(second).toBeCloseTo(fao, 3);
      expect(Math.abs(second / pressureAt(height) - 1)).toBeLessThan(0.006);
    },
  );

  test('example 2 of chapter 3: 1,800 m is 81.8 kPa by it', () => {
    expect(101.3 * ((293 - 0.0065 * 1800) / 293) ** 5.26).toBeCloseTo(81.756, 3);
  });
});

describe('a 15 psi weight against height, worked from IAPWS R7-97(2012) eq. 31', () => {
  test.each([
    { height: 0, degC: 120.955 },
    { height: 500, degC: 120.034 },
    { height: 1000, degC: 119.137 },
    { height: 1500, degC: 118.263 },
    { height: 2000, degC: 117.412 },
    { height: 3000, degC: 115.781 },
  ])('at $height m it is $degC degC', ({ height, degC }) => {
    expect(Number(steamTemp.compute([height, 15 * KPA_PER_PSI]))).toBeCloseTo(degC, 3);
  });

  test('at 1,500 m its lethal rate is 0.52', () => {
    expect(killRateAt(Number(steamTemp.compute([1500, 15 * KPA_PER_PSI])), 121.1, 10)).toBeCloseTo(0.52, 2);
  });

  test.each([
    { feet: 0, psig: 15.14 },
    { feet: 1000, psig: 15.66 },
    { feet: 2000, psig: 16.17 },
    { feet: 3000, psig: 16.66 },
    { feet: 5000, psig: 17.6 },
    { feet: 8000, psig: 18.92 },
  ])('121.1 degC at $feet ft needs $psig psi', ({ feet, psig }) => {
    const needed = (Number(saturationPressureKpa(121.1)) - pressureAt(feet * METRES_PER_FOOT)) / KPA_PER_PSI;
    expect(needed).toBeCloseTo(psig, 2);
  });
});

function pressureAt(altitude: number): number {
  return Number(airPressure.compute([altitude]));
}
