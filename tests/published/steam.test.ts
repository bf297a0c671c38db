import { describe, expect, test } from 'vitest';
import { saturationPressureKpa, saturationTemperatureC } from '#shared-calc/trade/heat/saturation.ts';
import { steamTemp } from '#shared-calc/trade/heat/steam-temp.ts';

/** Exact by definition (NIST SP 811 App. B). */
const KPA_PER_PSI = 6.894757293168;
const SEA_LEVEL_KPA = 101.325;

describe('saturated steam against IAPWS R7-97(2012), region 4', () => {
  // Table 35, printed to nine digits; rel 1e-8
  test.each([
    { kelvin: 300, megapascal: 0.353658941e-2 },
    { kelvin: 500, megapascal: 0.263889776e1 }, // Table 35, from memory
    { kelvin: 600, megapascal: 0.123443146e2 },
  ])('Table 35: at $kelvin K water boils under $megapascal MPa', ({ kelvin, megapascal }) => {
    const worked = Number(saturationPressureKpa(kelvin - 273.15)) / 1000;
    expect(Math.abs(worked / megapascal - 1)).toBeLessThan(1e-8);
  });

  // Table 36, printed to nine digits; rel 1e-8
  test.each([
    { megapascal: 0.1, kelvin: 0.372755919e3 },
    { megapascal: 1, kelvin: 0.453035632e3 },
    { megapascal: 10, kelvin: 0.584149488e3 }, // Table 36, from memory
  ])('Table 36: under $megapascal MPa water boils at $kelvin K', ({ megapascal, kelvin }) => {
    const worked = Number(saturationTemperatureC(megapascal * 1000)) + 273.15;
    expect(Math.abs(worked / kelvin - 1)).toBeLessThan(1e-8);
  });

  test('range of the equation: 273.15 K is 611.213 Pa, 647.096 K is 22.064 MPa', () => {
    expect(Number(saturationPressureKpa(0)) * 1000).toBeCloseTo(611.213, 3);
    expect(Number(saturationPressureKpa(647.096 - 273.15)) / 1000).toBeCloseTo(22.064, 3);
  });
});

describe('steam under a gauge at the sea, worked from IAPWS R7-97(2012) eq. 31, within 0.01 K', () => {
  test.each([
    { gauge: 0, absolute: 101.325, degC: 99.974, degF: 211.95 },
    { gauge: 5, absolute: 135.799, degC: 108.391, degF: 227.1 },
    { gauge: 10, absolute: 170.273, degC: 115.198, degF: 239.36 },
    { gauge: 11, absolute: 177.167, degC: 116.421, degF: 241.56 },
    { gauge: 15, absolute: 204.746, degC: 120.955, degF: 249.72 },
  ])('$gauge psi is $degC degC', ({ gauge, absolute, degC, degF }) => {
    const steam = Number(steamTemp.compute([0, gauge * KPA_PER_PSI]));
    expect(SEA_LEVEL_KPA + gauge * KPA_PER_PSI).toBeCloseTo(absolute, 3);
    expect(Math.abs(steam - degC)).toBeLessThan(0.01);
    expect(Math.abs(steam * 1.8 + 32 - degF)).toBeLessThan(0.018);
  });

  test('1.0 bar is 120.420 degC', () => {
    expect(Math.abs(Number(steamTemp.compute([0, 100])) - 120.42)).toBeLessThan(0.01);
  });

  test('15 psi never reaches 121.1 degC at the sea', () => {
    expect(steamTemp.compute([0, 15 * KPA_PER_PSI])).toBeLessThan(121.1);
  });
});

describe('pressure of saturated steam, worked from IAPWS R7-97(2012) eq. 30', () => {
  test.each([
    { degC: 110, kPa: 143.376, psig: 6.1 },
    { degC: 115, kPa: 169.177, psig: 9.84 },
    { degC: 121, kPa: 205.039, psig: 15.04 },
    { degC: 121.1, kPa: 205.685, psig: 15.14 },
    { degC: 125, kPa: 232.224, psig: 18.99 },
    { degC: 134, kPa: 304.199, psig: 29.42 },
  ])('$degC degC is $kPa kPa, $psig psi at the sea', ({ degC, kPa, psig }) => {
    const pressure = Number(saturationPressureKpa(degC));
    expect(pressure).toBeCloseTo(kPa, 3);
    expect((pressure - SEA_LEVEL_KPA) / KPA_PER_PSI).toBeCloseTo(psig, 2);
  });
});
