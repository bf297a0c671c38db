import { describe, expect, test } from 'vitest';
import { decimalOf, readListNumber } from '#shared-calc/read/list-figures.ts';
import { isMarkOf, takeMoneyApart } from '#shared-calc/read/list-money.ts';

describe('takeMoneyApart', () => {
  test.each([
    ['$4.60', '$', '4.60'],
    ['US$ 1,250.00', 'US$', '1,250.00'],
    ['4,60 €', '€', '4,60'],
    ['EUR 4,60', 'EUR', '4,60'],
    ['Fr. 12.50', 'Fr', '12.50'],
    ['12,- kr', 'kr', '12'],
    ['9.80 cr', 'cr', '9.80'],
    ['1\u00a0250,00', '', '1 250,00'],
    ['-$4.60', '$', '-4.60'],
    ['\u22124.60', '', '-4.60'],
    ['.50', '', '.50'],
    ['4,60 Euro', 'Euro', '4,60'],
    ['12.50 dollars', 'dollars', '12.50'],
  ])('%s is in "%s", and %s', (text, mark, number) => {
    expect(takeMoneyApart(text)).toEqual({ mark, number });
  });

  test.each(['on request', '4.60 per kg', '4.60/kg', '$4.60 USD', '(4.60)', '=4.60+1', '', '4 or 5', 'N/A'])(
    '%j is no amount',
    (text) => {
      expect(takeMoneyApart(text)).toBeUndefined();
    },
  );
});

describe('isMarkOf', () => {
  test.each([
    ['', 'EUR', true],
    ['eur', 'EUR', true],
    ['€', 'EUR', true],
    ['$', 'USD', true],
    ['$', 'CAD', true],
    ['US$', 'USD', true],
    ['Euro', 'EUR', true],
    ['dollars', 'USD', true],
    ['dollars', 'EUR', false],
    ['ars', 'USD', false],
    ['US$', 'CAD', false],
    ['£', 'EUR', false],
    ['USD', 'EUR', false],
    ['CR', 'cr', true],
    ['$', 'cr', false],
  ])('%j for %s: %s', (mark, currency, is) => {
    expect(isMarkOf(mark, currency)).toBe(is);
  });
});

describe('decimalOf', () => {
  test.each([
    [['4.60', '12'], '.'],
    [['4,60', '1.250,00'], ','],
    [['1,250', '4.60'], '.'],
    [['1,250', '12'], undefined],
    [['4,60', '4.60'], undefined],
    [[], undefined],
  ])('%j have the sign %s', (numbers, sign) => {
    expect(decimalOf(numbers)).toBe(sign);
  });
});

describe('readListNumber', () => {
  test('a mark of thousands is one where the decimal sign is known, and has two readings where it is not', () => {
    expect(readListNumber('1,250', { sign: '.', isKnown: true })).toEqual({ ok: true, value: 1250 });
    expect(readListNumber('1.250', { sign: ',', isKnown: true })).toEqual({ ok: true, value: 1250 });
    expect(readListNumber('1,250', { sign: '.', isKnown: false })).toMatchObject({
      fault: { kind: 'two-readings', readings: ['1250', '1.25'] },
    });
  });
});
