import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { saturationPressureKpa, saturationTemperatureC } from '#shared-calc/trade/heat/saturation.ts';

describe('saturationTemperatureC', () => {
  // Laws of IAPWS R7-97(2012), eqs. 30 and 31; its tables stand in tests/published/steam.test.ts.
  test('under the pressure at which it boils, water boils at that temperature', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 373.9, noNaN: true }), (degC) => {
        expect(saturationTemperatureC(saturationPressureKpa(degC) ?? 0)).toBeCloseTo(degC, 6);
      }),
    );
  });

  test('at the temperature at which it boils, water presses with that pressure', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.62, max: 22000, noNaN: true }), (kPa) => {
        expect((saturationPressureKpa(saturationTemperatureC(kPa) ?? 0) ?? 0) / kPa).toBeCloseTo(1, 8);
      }),
    );
  });

  test.each([0, 0.6, 22065, Number.NaN])('there is no boiling line at %d kPa', (kPa) => {
    expect(saturationTemperatureC(kPa)).toBeUndefined();
  });
});

describe('saturationPressureKpa', () => {
  test.each([-0.01, 374, Number.NaN])('there is no boiling line at %d degC', (degC) => {
    expect(saturationPressureKpa(degC)).toBeUndefined();
  });
});
