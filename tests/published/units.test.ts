import convert from 'convert';
import { describe, expect, test } from 'vitest';
import { fromBase, toBase, unitOf, unitSymbols } from '#shared-calc/quantity/unit.ts';

function inUnit(value: number, from: string, to: string): number {
  return fromBase(toBase(value, unitOf(from)), unitOf(to));
}

/** What one of each unit is in m, m2, m3, kg, K, Pa, s, J, W or mol, as published. A unit without a line here fails. */
const published = {
  // The International System of Units (BIPM, 9th edition): prefixes, and table 8 for min, h, d and L.
  mm: 0.001,
  cm: 0.01,
  m: 1,
  km: 1000,
  m2: 1,
  cm2: 0.0001,
  mm2: 0.000001,
  L: 0.001,
  mL: 0.000001,
  m3: 1,
  kg: 1,
  g: 0.001,
  degC: 1,
  K: 1,
  kPa: 1000,
  Pa: 1,
  bar: 100_000,
  min: 60,
  s: 1,
  h: 3600,
  d: 86_400,
  wk: 604_800,
  kWh: 3_600_000,
  J: 1,
  W: 1,
  kW: 1000,
  mol: 1,
  umol: 0.000001,
  // NIST SP 811 App. B.8 and B.9, NIST Handbook 44 App. C: exact by definition; the year is that of 365 days.
  in: 0.0254,
  ft: 0.3048,
  mi: 1609.344,
  in2: 0.00064516,
  ft2: 0.09290304,
  gal: 0.003785411784,
  qt: 0.000946352946,
  dry_qt: 0.001101220942715,
  fl_oz: 0.0000295735295625,
  ft3: 0.028316846592,
  in3: 0.000016387064,
  lb: 0.45359237,
  oz: 0.028349523125,
  degF: 5 / 9,
  F_deg: 5 / 9,
  psi: 6894.757293168,
  yr: 31_536_000,
  // Counts, shares and money.
  '%': 0.01,
  each: 1,
  number: 1,
  share: 1,
  money: 1,
} as const;

/** NIST Handbook 44 App. C: customary units in each other, exact by definition. */
const exact: readonly (readonly [number, string, number, string])[] = [
  [1, 'gal', 231, 'in3'],
  [1, 'qt', 57.75, 'in3'],
  [1, 'dry_qt', 67.200625, 'in3'],
  [1, 'ft2', 144, 'in2'],
  [16, 'oz', 1, 'lb'],
  [1, 'wk', 7, 'd'],
  [36, 'ft', 10.9728, 'm'],
];

describe('units against what is published', () => {
  test('every unit of the program is held against a published value', () => {
    expect(Object.keys(published).toSorted()).toEqual([...unitSymbols, 'number', 'share'].toSorted());
  });

  test.each(Object.entries(published))('one %s more is %d of its base unit more, to 1e-12', (symbol, factor) => {
    const step = toBase(8, unitOf(symbol)) - toBase(7, unitOf(symbol));
    expect(Math.abs(step / factor - 1)).toBeLessThan(1e-12);
  });
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
    expect(inUnit(9, 'F_deg', 'K')).toBeCloseTo(5, 12);
  });
});

/** The npm package `convert` (MIT): an independent table, by its names; it has psi to seven digits. */
const independent = [
  ['mm', 'mm', 'm'],
  ['cm', 'cm', 'm'],
  ['km', 'km', 'm'],
  ['in', 'in', 'm'],
  ['ft', 'ft', 'm'],
  ['mi', 'mile', 'm'],
  ['mm2', 'mm2', 'm2'],
  ['cm2', 'cm2', 'm2'],
  ['in2', 'in2', 'm2'],
  ['ft2', 'sq ft', 'm2'],
  ['mL', 'mL', 'm3'],
  ['L', 'L', 'm3'],
  ['in3', 'in3', 'm3'],
  ['ft3', 'cubic foot', 'm3'],
  ['fl_oz', 'fl oz', 'm3'],
  ['qt', 'quart', 'm3'],
  ['gal', 'gal', 'm3'],
  ['g', 'g', 'kg'],
  ['oz', 'oz', 'kg'],
  ['lb', 'lb', 'kg'],
  ['degF', 'F', 'C'],
  ['kPa', 'kPa', 'Pa'],
  ['bar', 'bar', 'Pa'],
  ['psi', 'psi', 'Pa'],
  ['min', 'min', 's'],
  ['h', 'h', 's'],
  ['d', 'd', 's'],
  ['wk', 'week', 's'],
  ['yr', 'year', 's'],
  ['kWh', 'kWh', 'J'],
] as const;

describe('units against an independent unit library', () => {
  test.each(independent)('7 %s agree', (symbol, theirs, theirBase) => {
    const other = convert(7, theirs).to(theirBase);
    expect(Math.abs(toBase(7, unitOf(symbol)) / other - 1)).toBeLessThan(symbol === 'psi' ? 1e-7 : 1e-12);
  });
});
