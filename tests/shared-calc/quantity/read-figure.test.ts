import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readFigure } from '#shared-calc/quantity/read-figure.ts';
import { fromBase, unitOf, unitSymbols } from '#shared-calc/quantity/unit.ts';

function read(text: string, unit: string, decimalComma = false) {
  const figure = readFigure(text, { unit, decimalComma });
  return figure.ok ? Number(fromBase(figure.value.value, unitOf(unit)).toPrecision(12)) : figure.fault.kind;
}

describe('readFigure', () => {
  test.each([
    ['40', 'mm', 40],
    ['40 mm', 'mm', 40],
    ['4 cm', 'mm', 40],
    ['40mm', 'mm', 40],
    ['1/2 in', 'mm', 12.7],
    ['1 1/2 in', 'mm', 38.1],
    ['2 gal', 'L', 7.570823568],
    ['12', '%', 12],
    ['12 %', '%', 12],
    ['12%', '%', 12],
    ['-5 degC', 'degC', -5],
    ['\u22125 \u00b0C', 'degC', -5],
    ['77 degF', 'degC', 25],
    ['1,288.88', 'money', 1288.88],
    ['3 m\u00b2', 'm2', 3],
    ['12.2 g/L', 'g/L', 12.2],
    ['7', '%/d', 7],
    ['.5', 'L', 0.5],
    ['1e-3 m', 'mm', 1],
    ['15 psi', 'kPa', 103.421359398],
    ['9 F deg', 'K', 5],
    ['16 fl oz', 'qt', 0.5],
    ['9F deg', 'K', 5],
    ['2 dry qt', 'dry_qt', 2],
    ["1'250 mm", 'mm', 1250],
    ['1e300 ft3', 'ft3', 1e300],
  ])('%s in a %s box is %s', (text, unit, figure) => {
    expect(read(text, unit)).toBe(figure);
  });

  test.each([
    ['2 ft 6 in', 'in', 30],
    ['2 ft 6', 'in', 30],
    ['2ft6in', 'in', 30],
    ['2\' 6"', 'in', 30],
    ['2\'6"', 'in', 30],
    ['2\'-6 1/2"', 'in', 30.5],
    ['2\u2032 6\u2033', 'in', 30],
    ['2\u2019 6\u201d', 'in', 30],
    ['1/2"', 'in', 0.5],
    ['7/8"', 'in', 0.875],
    ["6'", 'ft', 6],
    ['3 1/4 in', 'in', 3.25],
    ['3-1/4"', 'in', 3.25],
    ['3\u00bc in', 'in', 3.25],
    ['\u00be"', 'in', 0.75],
    ['5 1/2', 'in', 5.5],
    ['12 inches', 'in', 12],
    ['2 feet', 'ft', 2],
    ['2 feet 6 inches', 'in', 30],
    ['1 foot', 'in', 12],
    ['3 miles', 'mi', 3],
    ['68 F', 'degF', 68],
    ['68F', 'degF', 68],
    ['68\u00b0F', 'degF', 68],
    ['68 deg F', 'degF', 68],
    ['68 degrees F', 'degF', 68],
    ['20 C', 'degC', 20],
    ['68 F', 'degC', 20],
    ['3.6 F', 'K', 2],
    ['2 C', 'F_deg', 3.6],
    ['5 h 20 min', 'min', 320],
    ['5 hours 20 minutes', 'min', 320],
    ['5 h 20', 'min', 320],
    ['1:30 h', 'min', 90],
    ['2 min 30 s', 'min', 2.5],
    ['1 gal 2 qt', 'qt', 6],
    ['1/2 gal', 'qt', 2],
    ['2 fl oz', 'fl_oz', 2],
    ['2 fluid ounces', 'fl_oz', 2],
    ['3 lb 4 oz', 'oz', 52],
    ['3 lbs', 'lb', 3],
    ['2 pounds, 8 ounces', 'lb', 2.5],
    ['3 quarts', 'qt', 3],
    ['4 sq ft', 'ft2', 4],
    ['2 square feet', 'ft2', 2],
    ['2 cu ft', 'ft3', 2],
    ['3 litres', 'L', 3],
    ['1 m 20 cm', 'mm', 1200],
    ['2 days 6 hours', 'h', 54],
    ['-2 ft 6 in', 'in', -30],
    ['\u2212 1/2"', 'in', -0.5],
    ['+5 1/2 in', 'in', 5.5],
    ['-40 F', 'degF', -40],
  ])('%s in a %s box is read as people write it: %s', (text, unit, figure) => {
    expect(read(text, unit)).toBe(figure);
  });

  test.each([
    ['6 in 2 ft', 'in'],
    ['2 ft 6 lb', 'in'],
    ['2 ft 6 in 3', 'in'],
    ['2 ft2 6', 'in'],
    ['3 - 1/4', 'in'],
    ['1:75 h', 'min'],
  ])('%s in a %s box is none, for its parts do not go together', (text, unit) => {
    expect(read(text, unit)).toBe('not-a-figure');
  });

  test('a time with a colon alone may be hours or minutes, and is asked for', () => {
    expect(readFigure('1:30', { unit: 'min' })).toEqual({
      ok: false,
      fault: { kind: 'two-readings', text: '1:30', readings: ['1 h 30 min', '1 min 30 s'] },
    });
  });

  test.each([
    ['2 ft 6,5 in', 'in', 30.5],
    ['12,5 mm', 'mm', 12.5],
    ['1.288,88', 'money', 1288.88],
    ['12.5 mm', 'mm', 'other-sign'],
  ])('with the decimal comma set, %s is %s', (text, unit, figure) => {
    expect(read(text, unit, true)).toBe(figure);
  });

  test('with the decimal comma set, 1.200 can be read in two ways and is not guessed at', () => {
    expect(read('1.200', 'L', true)).toBe('two-readings');
  });

  test.each([
    'drainage',
    '40 mm * 2',
    '12,5 mm * 2',
    '1,250 + 3',
    '12 L/5',
    '3 +',
    '',
    '40 mm mm',
    '1/0 in',
    '1e999 L',
    '9e307 km',
  ])('"%s" is no figure; it may be a rule', (text) => {
    expect(read(text, 'mm')).toBe('not-a-figure');
  });

  test('an unknown unit is named with its place', () => {
    expect(readFigure('40 furlongs', { unit: 'mm' })).toEqual({
      ok: false,
      fault: { kind: 'unknown-unit', unit: 'furlongs', from: 3, to: 11 },
    });
  });

  test('what was written in any unit is read back the same', () => {
    fc.assert(
      fc.property(fc.constantFrom(...unitSymbols), fc.double({ min: 0.001, max: 1e6, noNaN: true }), (unit, value) => {
        const figure = Number(value.toPrecision(9));
        expect(read(`${figure} ${unit}`, unit)).toBeCloseTo(figure, 6);
      }),
    );
  });
});
