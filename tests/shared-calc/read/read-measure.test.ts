import { describe, expect, test } from 'vitest';
import { readMeasure } from '#shared-calc/read/read-measure.ts';
import { failed, ok } from '#shared-calc/result.ts';
import { said } from '#shared-calc/words/say-entry-fault.ts';

const dam = { name: 'Dam height', stored: 'mm', low: 0, high: 400, mayBeEmpty: true };

describe('readMeasure', () => {
  test.each([
    ['150', 150],
    [' 150 mm ', 150],
    ['15 cm', 150],
    ['6 in', 152.4],
    ['1 1/2 in', 38.1],
    ['0', 0],
    ['400', 400],
  ])('reads %s as %d mm', (text, mm) => {
    expect(readMeasure(text, dam)).toEqual(ok(mm));
  });

  test('a bare number takes the unit that is shown', () => {
    expect(readMeasure('6', { ...dam, shown: 'in' })).toEqual(ok(152.4));
  });

  test('a decimal comma is read where the workshop writes one', () => {
    expect(readMeasure('12,5', dam, { decimalComma: true })).toEqual(ok(12.5));
  });

  test('a number that may be thousands or a decimal is refused with both', () => {
    expect([
      said(readMeasure('1.234', { name: 'Litres', stored: 'L' }, { decimalComma: true })),
      said(readMeasure('1.234 L', { name: 'Litres', stored: 'L' }, { decimalComma: true })),
      readMeasure('1.234', { name: 'Litres', stored: 'L' }),
    ]).toEqual([
      failed('Litres: "1.234" may be 1234 or 1,234.'),
      failed('Litres: "1.234" may be 1234 or 1,234.'),
      ok(1.234),
    ]);
  });

  test('an empty field is left empty where it may be, and asked for where not', () => {
    expect([readMeasure(' ', dam), said(readMeasure('', { ...dam, mayBeEmpty: false }))]).toEqual([
      ok(undefined),
      failed('Dam height needs a figure.'),
    ]);
  });

  test.each([
    ['40 L', 'Dam height is in mm, a length; "40 L" does not fit.'],
    ['deep', 'Dam height: "deep" is not a figure.'],
    ['40 mmm', 'Dam height: there is no unit called mmm.'],
    ['-1', 'Dam height is 0 mm or more; -1 mm is less.'],
    ['401', 'Dam height is 400 mm at most; 401 mm is more.'],
  ])('refuses %s and says why', (text, says) => {
    expect(said(readMeasure(text, dam))).toEqual(failed(says));
  });

  test('a share is written in % and kept as a share', () => {
    const margin = { name: 'Margin', stored: 'share', shown: '%', low: 0, high: 0.95 };
    expect(['30', '30 %', '0.3 share', '96'].map((text) => said(readMeasure(text, margin)))).toEqual([
      ok(0.3),
      ok(0.3),
      ok(0.3),
      failed('Margin is 95 % at most; 96 % is more.'),
    ]);
  });

  test('a whole thing has no parts', () => {
    expect(said(readMeasure('2.5', { name: 'Lead', stored: 'each', whole: true }))).toEqual(
      failed('Lead is a whole number; 2.5 is not.'),
    );
  });

  test('a temperature is a reading and no step', () => {
    const lowest = { name: 'Lowest', stored: 'degC' };
    expect([readMeasure('68 degF', lowest), said(readMeasure('3 K', lowest))]).toEqual([
      ok(20),
      failed('Lowest is in degC, a temperature; "3 K" does not fit.'),
    ]);
  });
});
