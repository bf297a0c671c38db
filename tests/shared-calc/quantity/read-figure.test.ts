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
