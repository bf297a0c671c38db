import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { showWithUnit } from '#shared-calc/quantity/shown-unit.ts';
import { roundHalfAway, writeFigure, writeWithUnit } from '#shared-calc/quantity/write-figure.ts';
import { toBase, unitOf } from '#shared-calc/quantity/unit.ts';

const base = (value: number, unit: string) => toBase(value, unitOf(unit));

describe('writeFigure', () => {
  test.each([
    [16.8367, 'L', '16.84'],
    [0.4005, 'm2', '0.4005'],
    [40, 'mm', '40'],
    [1.5, 'mm', '1.5'],
    [12000, 'mm', '12000'],
    [1288.88, 'money', '1,288.88'],
    [5.6179, '%', '5.6'],
    [12, '%', '12'],
    [3, 'each', '3'],
    [26.75, 'degC', '26.75'],
    [1.9567, 'kPa', '1.957'],
    [55.93, 'd', '55.9'],
    [0.0131, 'lb', '0.013'],
    [0.0592, 'gal', '0.059'],
    [0.0045, 'kg', '0.0045'],
    [0.25, 'each', '0.25'],
    [0.004, 'W', '0.004'],
    [0.50249, 'L', '0.50'],
    [0, 'kg', '0.00'],
    [1e-17, 'L', '0.00'],
    [-0.0131, 'lb', '-0.013'],
    [0.0045, 'money/L', '0.0045'],
    [0.014, 'money', '0.01'],
  ])('%d %s is shown as %s', (value, unit, shown) => {
    expect(writeFigure(base(value, unit), unit)).toBe(shown);
  });

  test('a decimal comma turns the marks round', () => {
    expect(writeFigure(base(1288.88, 'money'), 'money', { decimalComma: true })).toBe('1.288,88');
  });

  test('the working shows one decimal more, so that its parts add up', () => {
    expect(writeFigure(base(33.70475, 'L'), 'L', { extraDecimals: 1 })).toBe('33.705');
  });

  test('a unit keeps to its figure with a space that does not break', () => {
    expect(writeWithUnit(base(40, 'mm'), 'mm')).toBe('40\u00a0mm');
  });

  test('a workshop that reads inches and gallons sees them, and the figure does not change', () => {
    const display = { unitsShown: { length: 'in', volume: 'gal', temperature: 'degF' }, currency: 'cr' };
    expect([
      showWithUnit(base(38.1, 'mm'), 'mm', display),
      showWithUnit(base(7.570823568, 'L'), 'L', display),
      showWithUnit(25, 'degC', display),
      showWithUnit(2, 'K', display),
    ]).toEqual(['1.50\u00a0in', '2.00\u00a0gal', '77.0\u00a0degF', '3.6\u00a0F_deg']);
  });

  test('a unit that no workshop chooses stays: air in m3/h beside mist in fl oz a day', () => {
    const display = { unitsShown: { flow: 'fl_oz/d' }, currency: 'cr' };
    expect([
      showWithUnit(base(100, 'mL/d'), 'mL/d', display),
      showWithUnit(base(0.27, 'm3/h'), 'm3/h', display),
    ]).toEqual(['3.38\u00a0fl_oz/d', '0.27\u00a0m3/h']);
  });

  test('in Fahrenheit a temperature and a step add up as they are seen', () => {
    const display = { unitsShown: { temperature: 'degF' }, currency: 'cr' };
    expect([
      showWithUnit(23, 'degC', display),
      showWithUnit(3.73, 'K', display),
      showWithUnit(26.73, 'degC', display),
    ]).toEqual(['73.4\u00a0degF', '6.7\u00a0F_deg', '80.1\u00a0degF']);
  });

  test('what is shown is within 1 % of the figure, whatever its unit', () => {
    const units = ['L', 'kg', 'lb', 'gal', 'm2', 'd', '%', 'each', 'W', 'kPa', 'g/L', 'mL/d'];
    fc.assert(
      fc.property(fc.constantFrom(...units), fc.double({ min: 1e-4, max: 1e6, noNaN: true }), (unit, value) => {
        const shown = Number(writeFigure(base(value, unit), unit).replaceAll(',', ''));
        expect(Math.abs(shown - value)).toBeLessThanOrEqual(0.01 * value * (1 + 1e-9));
      }),
    );
  });
});

describe('roundHalfAway', () => {
  test.each([
    [1.005, 2, 1.01],
    [2.675, 2, 2.68],
    [-2.5, 0, -3],
    [2.5, 0, 3],
    [12.251, 1, 12.3],
  ])('%d with %d decimals is %d', (value, decimals, rounded) => {
    expect(roundHalfAway(value, decimals)).toBe(rounded);
  });

  test('never moves a figure by more than half of its last place', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e6, max: 1e6, noNaN: true }),
        fc.integer({ min: 0, max: 4 }),
        (value, decimals) => {
          expect(Math.abs(roundHalfAway(value, decimals) - value)).toBeLessThanOrEqual(0.5 * 10 ** -decimals + 1e-8);
        },
      ),
    );
  });
});
