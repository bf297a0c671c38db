import convert from 'convert';
import { describe, expect, test } from 'vitest';
import { fromBase, toBase, unitOf } from '#shared-calc/quantity/unit.ts';

function inUnit(value: number, from: string, to: string): number {
  return fromBase(toBase(value, unitOf(from)), unitOf(to));
}

/** NIST SP 811 App. B.8/B.9 and NIST Handbook 44 App. C: exact by definition. */
const exact: readonly (readonly [number, string, number, string])[] = [
  [1, 'in', 25.4, 'mm'],
  [1, 'ft', 0.3048, 'm'],
  [1, 'gal', 3.785411784, 'L'],
  [1, 'gal', 231, 'in3'],
  [1, 'qt', 0.946352946, 'L'],
  [1, 'qt', 57.75, 'in3'],
  [1, 'dry_qt', 1.101220942715, 'L'],
  [1, 'dry_qt', 67.200625, 'in3'],
  [1, 'fl_oz', 29.5735295625, 'mL'],
  [1, 'in3', 16.387064, 'mL'],
  [1, 'ft3', 28.316846592, 'L'],
  [1, 'lb', 0.45359237, 'kg'],
  [1, 'oz', 28.349523125, 'g'],
  [1, 'psi', 6894.757293168, 'Pa'],
  [1, 'bar', 100, 'kPa'],
  [1, 'ft2', 144, 'in2'],
  [1, 'm2', 10_000, 'cm2'],
  [1, 'kWh', 3_600_000, 'J'],
  [1, 'wk', 7, 'd'],
  [36, 'ft', 10.9728, 'm'],
];

describe('units against NIST SP 811 and Handbook 44', () => {
  test.each(exact)('%d %s is %d %s to 1e-12', (value, from, result, to) => {
    expect(Math.abs(inUnit(value, from, to) / result - 1)).toBeLessThan(1e-12);
  });

  test('a cubic foot holds 7.480519481 gal, 25.714046558 dry qt and 29.922077922 qt (Handbook 44 App. C)', () => {
    expect(['gal', 'dry_qt', 'qt'].map((unit) => inUnit(1, 'ft3', unit).toFixed(9))).toEqual([
      '7.480519481',
      '25.714046558',
      '29.922077922',
    ]);
  });

  test('a dry quart is 1.163647186 liquid quarts (Handbook 44 App. C)', () => {
    expect(inUnit(1, 'dry_qt', 'qt').toFixed(9)).toBe('1.163647186');
  });

  test('a pound a square foot is 4.88242763638 kg/m2, a pound a cubic foot 16.01846337 kg/m3 (NIST SP 811 App. B)', () => {
    expect(inUnit(1, 'lb/ft2', 'kg/m2').toFixed(11)).toBe('4.88242763638');
    expect(inUnit(1, 'lb/ft3', 'kg/m3').toFixed(8)).toBe('16.01846337');
  });

  test.each([
    [32, 0],
    [212, 100],
    [98.6, 37],
    [-40, -40],
    [250, 121.11111111111111],
  ])('%d degF is %d degC: (t - 32) / 1.8 (NIST SP 811 App. B.9)', (fahrenheit, celsius) => {
    expect(inUnit(fahrenheit, 'degF', 'degC')).toBeCloseTo(celsius, 10);
  });

  test('an interval of 1 degF inside a compound is 5/9 K (NIST SP 811 App. B.9)', () => {
    expect(inUnit(1, 'W/m2/degF', 'W/m2/K')).toBeCloseTo(1.8, 12);
  });
});

/** The npm package `convert` (MIT): an independent table of factors. */
const independent = [
  ['in', 'mm', 'in', 'mm'],
  ['ft', 'm', 'ft', 'm'],
  ['gal', 'L', 'gal', 'L'],
  ['qt', 'L', 'quart', 'L'],
  ['fl_oz', 'mL', 'fl oz', 'mL'],
  ['lb', 'kg', 'lb', 'kg'],
  ['oz', 'g', 'oz', 'g'],
  ['in3', 'mL', 'in3', 'mL'],
  ['ft3', 'L', 'cubic foot', 'L'],
  ['ft2', 'm2', 'sq ft', 'm2'],
  ['bar', 'Pa', 'bar', 'Pa'],
] as const;

describe('units against an independent unit library', () => {
  test.each(independent)('%s in %s agrees', (from, to, theirs, theirTarget) => {
    const other = convert(7, theirs).to(theirTarget);
    expect(Math.abs(inUnit(7, from, to) / other - 1)).toBeLessThan(1e-12);
  });
});
