import { describe, expect, test } from 'vitest';
import { readPriceCoins } from '#shared-calc/papers/read-price-coins.ts';

describe('readPriceCoins', () => {
  test.each([
    ['9.80', { coinDecimals: 2 }, 980],
    [' 12 ', { coinDecimals: 2 }, 1200],
    ['9.800', { coinDecimals: 2 }, 980],
    ['9,80', { coinDecimals: 2, decimalComma: true }, 980],
    ['980', { coinDecimals: 0 }, 980],
    ['0.125', { coinDecimals: 3 }, 125],
  ])('%j is %o coins', (text, options, coins) => {
    expect(readPriceCoins(text, options)).toEqual({ ok: true, value: coins });
  });

  test.each([
    ['nine', '"nine" is not a price.'],
    ['', '"" is not a price.'],
    ['1,288.88', '"1,288.88" is not a price.'],
    ['-3', 'The price -3 is below zero.'],
    ['9.805', 'The price 9.805 has a fraction of a coin.'],
    ['99999999999999999', 'The price 99999999999999999 is too large.'],
  ])('%j is refused', (text, says) => {
    expect(readPriceCoins(text, { coinDecimals: 2 })).toEqual({ ok: false, fault: says });
  });
});
