import { describe, expect, test } from 'vitest';
import { currencies, findCurrency } from '#shared-calc/quantity/currencies.ts';

/** An independent list: that of the Unicode locale data, which comes with Node. It knows past currencies as well. */
const known: ReadonlySet<string> = new Set(Intl.supportedValuesOf('currency'));

const usualDecimals = (currency: string) =>
  new Intl.NumberFormat('en', { style: 'currency', currency }).resolvedOptions().maximumFractionDigits;

/** Withdrawn by amendments of ISO 4217; the last two are units of account of no country. */
const past = ['ANG', 'BGN', 'CUC', 'HRK', 'SLL', 'ZWL', 'XDR', 'XSU'];

/** Codes of funds and of a country's second money, and one too new for the locale data. */
const beside = ['BOV', 'CHE', 'CHW', 'CLF', 'COU', 'MXV', 'USN', 'UYI', 'UYW', 'VED', 'XCG'];

/** Where the locale data says how many decimals are in use, and ISO 4217 how many there are. */
const usedWithout: Readonly<Record<string, number>> = {
  AFN: 2,
  ALL: 2,
  COP: 2,
  HUF: 2,
  IDR: 2,
  IQD: 3,
  IRR: 2,
  KPW: 2,
  LAK: 2,
  LBP: 2,
  MGA: 2,
  MMK: 2,
  PKR: 2,
  SOS: 2,
  SYP: 2,
  YER: 2,
};

describe('currencies', () => {
  test('are those of the Unicode locale data, but for what ISO 4217 withdrew and the codes of funds', () => {
    const codes = currencies.map(({ code }) => code);
    expect(codes).toEqual([...new Set(codes)].toSorted());
    expect([...known].filter((code) => !codes.includes(code)).filter((code) => !past.includes(code))).toEqual([]);
    expect(codes.filter((code) => !known.has(code)).filter((code) => !beside.includes(code))).toEqual([]);
  });

  test('have the decimals that the locale data has, but where less are in use than there are', () => {
    const other = currencies.filter(({ code, decimals }) => usualDecimals(code) !== decimals);
    expect(Object.fromEntries(other.map(({ code, decimals }) => [code, decimals]))).toEqual(usedWithout);
  });

  test.each([
    { currency: 'JPY', decimals: 0 },
    { currency: 'EUR', decimals: 2 },
    { currency: 'USD', decimals: 2 },
    { currency: 'KWD', decimals: 3 },
    { currency: 'CLF', decimals: 4 },
  ])('$currency has $decimals decimals (ISO 4217)', ({ currency, decimals }) => {
    expect(findCurrency(currency)?.decimals).toBe(decimals);
  });

  test('are found by code, by name and as the list shows them', () => {
    expect(['jpy', 'Japanese yen', ' JPY, Japanese yen'].map((text) => findCurrency(text)?.code)).toEqual([
      'JPY',
      'JPY',
      'JPY',
    ]);
    expect(findCurrency('cr')).toBeUndefined();
  });
});
