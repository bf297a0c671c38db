import { describe, expect, test } from 'vitest';
import { readMoney } from '#shared-calc/read/read-money.ts';
import { failed, ok } from '#shared-calc/result.ts';
import { said } from '#shared-calc/words/say-entry-fault.ts';

const point = { currency: 'cr', coinDecimals: 2, decimalComma: false };
const comma = { currency: 'EUR', coinDecimals: 2, decimalComma: true };

describe('readMoney', () => {
  test.each([
    ['9.80', 980],
    ['9.8 cr', 980],
    ['1,288.88', 128_888],
    ['0', 0],
    [' 214 ', 21_400],
  ])('reads %s as %d coins', (text, coins) => {
    expect(readMoney(text, point)).toEqual(ok(coins));
  });

  test('reads a decimal comma and its currency', () => {
    expect(readMoney('1.288,88 EUR', comma)).toEqual(ok(128_888));
  });

  test('an amount that may be thousands or a decimal is refused with both', () => {
    expect(said(readMoney('1.234', comma, 'Price'))).toEqual(failed('Price: "1.234" may be 1234 or 1,234.'));
    expect(said(readMoney('1,234', point, 'Price'))).toEqual(failed('Price: "1,234" may be 1234 or 1.234.'));
  });

  test('the other decimal sign is named, and never read', () => {
    expect([said(readMoney('9,80', point, 'Price')), said(readMoney('9.80', comma))]).toEqual([
      failed('Price: here the decimal sign is the point: 9.80.'),
      failed('Here the decimal sign is the comma: 9,80.'),
    ]);
  });

  test('a currency without coins takes whole amounts only', () => {
    const yen = { currency: 'JPY', coinDecimals: 0, decimalComma: false };
    expect([readMoney('980', yen), said(readMoney('980.5', yen))]).toEqual([
      ok(980),
      failed('"980.5" has a fraction of a coin.'),
    ]);
    expect([readMoney('3,200', yen), readMoney('3.200', { ...yen, decimalComma: true })]).toEqual([ok(3200), ok(3200)]);
  });

  test('a currency of three decimals takes its smallest coin, and an amount is read before there is a currency', () => {
    expect(readMoney('9.805', { currency: 'KWD', coinDecimals: 3, decimalComma: false })).toEqual(ok(9805));
    expect(readMoney('9.80', { ...point, currency: '' })).toEqual(ok(980));
  });

  test.each([
    ['9.805', '"9.805" has a fraction of a coin.'],
    ['-1', '"-1" is below zero.'],
    ['free', '"free" is not an amount of money.'],
    ['9 mm', '"9 mm" is not an amount of money.'],
    ['', '"" is not an amount of money.'],
    ['99999999999999999', '"99999999999999999" is too large.'],
  ])('refuses %s and never rounds', (text, says) => {
    expect(said(readMoney(text, point))).toEqual(failed(says));
  });
});
