import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readFigure } from '#shared-calc/quantity/read-figure.ts';
import { shownUnit, showValue, showWithUnit, type Display } from '#shared-calc/quantity/shown-unit.ts';
import { fromBase, toBase, unitOf, unitSymbols } from '#shared-calc/quantity/unit.ts';

const us: Display = { units: 'us', fractions: true, unitsShown: {}, currency: 'USD', moneyDecimals: 2 };
const said = (value: number, unit: string, display = us) =>
  showWithUnit(toBase(value, unitOf(unit)), unit, display).replace('\u00a0', ' ');

describe('shownUnit', () => {
  test.each([
    ['mm', 'in'],
    ['cm', 'in'],
    ['m', 'ft'],
    ['km', 'mi'],
    ['mL', 'fl_oz'],
    ['L', 'gal'],
    ['g', 'oz'],
    ['kg', 'lb'],
    ['m2', 'ft2'],
    ['cm2', 'in2'],
    ['degC', 'degF'],
    ['K', 'F_deg'],
    ['kPa', 'psi'],
    ['g/L', 'oz/gal'],
    ['g/m2', 'oz/ft2'],
    ['mL/d', 'fl_oz/d'],
    ['each/m2', 'each/ft2'],
    ['money/L', 'money/gal'],
    ['min', 'min'],
    ['umol/m2/s', 'umol/m2/s'],
    ['W/m2/K', 'W/m2/K'],
    ['gal', 'gal'],
    ['%', '%'],
    ['choice', 'choice'],
  ])('a US workshop sees what is in %s in %s', (unit, shown) => {
    expect(shownUnit(unit, us)).toBe(shown);
  });

  test.each([
    ['in', { mm: 'in', m: 'ft', km: 'mi' }],
    ['ft', { mm: 'ft', m: 'ft', km: 'mi' }],
    ['cm', { mm: 'cm', m: 'm', km: 'km' }],
  ])('a metric workshop that sees lengths in %s sees larger ones in a larger unit', (length, shown) => {
    const display = { unitsShown: { length }, currency: 'cr' };
    const seen = Object.fromEntries(Object.keys(shown).map((unit) => [unit, shownUnit(unit, display)]));

    expect(seen).toEqual(shown);
  });

  test('either workshop can see one kind in the other system', () => {
    expect([
      shownUnit('kPa', { ...us, unitsShown: { pressure: 'metric' } }),
      shownUnit('m', { unitsShown: { length: 'us' }, currency: 'cr' }),
      shownUnit('K', { unitsShown: { temperature: 'us' }, currency: 'cr' }),
    ]).toEqual(['kPa', 'ft', 'F_deg']);
  });
});

describe('showWithUnit', () => {
  test.each([
    [600, 'mm', '23 5/8 in'],
    [12.7, 'mm', '1/2 in'],
    [10, 'mm', '3/8 in'],
    [6, 'mm', '1/4 in'],
    [3, 'mm', '1/8 in'],
    [4, 'mm', '5/32 in'],
    [1, 'mm', '0.039 in'],
    [0, 'mm', '0 in'],
    [-38.1, 'mm', '-1 1/2 in'],
    [304.8, 'mm', '12 in'],
    [118.872, 'm', '390 ft'],
    [25, 'km', '15.5 mi'],
    [16.84, 'L', '4.45 gal'],
    [0.3, 'L', '10.1 fl_oz'],
    [0, 'L', '0.00 gal'],
    [5.94, 'g', '0.21 oz'],
    [0.05, 'kg', '1.76 oz'],
    [99.79, 'kg', '220.00 lb'],
    [2, 'K', '3.6 F_deg'],
    [27, 'degC', '80.6 degF'],
    [0.4005, 'm2', '4.31 ft2'],
  ])('%d %s is said as %s in a US workshop', (value, unit, words) => {
    expect(said(value, unit)).toBe(words);
  });

  test('what is not nought is never shown as nought', () => {
    fc.assert(
      fc.property(fc.constantFrom(...unitSymbols), fc.double({ min: 1e-5, max: 1e4, noNaN: true }), (unit, value) => {
        const base = toBase(value, unitOf(unit));
        fc.pre(
          unit !== 'money' && Math.abs(base) > 1e-5 && Math.abs(fromBase(base, unitOf(shownUnit(unit, us)))) > 1e-4,
        );
        expect(/[1-9]/.test(showValue(base, unit, us))).toBe(true);
      }),
    );
  });

  test('every unit is read back as it was shown, within what is shown', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...unitSymbols),
        fc.double({ min: 0.01, max: 5000, noNaN: true }),
        fc.boolean(),
        (unit, value, decimalComma) => {
          const display = { ...us, decimalComma };
          const shown = shownUnit(unit, display);
          const base = toBase(value, unitOf(unit));
          const words = showValue(base, unit, display);
          const read = readFigure(`${words} ${shown}`, { unit, decimalComma });
          // Four digits with a mark of thousands and no decimals have two readings, and are asked for.
          fc.pre(unit !== 'money' && (read.ok || read.fault.kind !== 'two-readings'));
          const own = fromBase(base, unitOf(shown));
          const back = read.ok ? fromBase(read.value.value, unitOf(shown)) : NaN;
          // A sixteenth of an inch is read within 6 %, all else within 1 %; degrees to a twentieth.
          const within = unitOf(shown).zero === undefined ? (shown === 'in' ? 0.06 : 0.01) * own : 0.05;
          expect(Math.abs(back - own)).toBeLessThanOrEqual(within * (1 + 1e-9));
        },
      ),
    );
  });
});
