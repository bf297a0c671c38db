import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readCoins, toCoins } from '#shared-calc/buy/coins.ts';
import { coinsText } from '#shared-calc/quantity/coins-text.ts';

describe('toCoins', () => {
  test.each([
    { money: 1.005, coins: 101, why: 'binary trap: 1.005 x 100 is 100.49999999999999' },
    { money: 2.675, coins: 268, why: 'binary trap: (2.675).toFixed(2) is 2.67' },
    { money: 646.224, coins: 64_622, why: 'below half goes down' },
    { money: 0, coins: 0, why: 'nothing is nothing' },
  ])('$money is $coins coins ($why)', ({ money, coins }) => {
    expect(toCoins(money, 2)).toBe(coins);
  });
});

describe('coinsText', () => {
  test.each([
    { coins: 161_556, decimals: 2, text: '1615.56' },
    { coins: 5, decimals: 2, text: '0.05' },
    { coins: -5, decimals: 2, text: '-0.05' },
    { coins: 0, decimals: 2, text: '0.00' },
    { coins: 1234, decimals: 0, text: '1234' },
    { coins: 1234, decimals: 3, text: '1.234' },
  ])('$coins coins with $decimals decimals read $text', ({ coins, decimals, text }) => {
    expect(coinsText(coins, decimals)).toBe(text);
  });

  test('reads back as the same coins', () => {
    fc.assert(
      fc.property(fc.integer(), fc.integer({ min: 0, max: 4 }), (coins, decimals) => {
        expect(readCoins(coinsText(coins, decimals), decimals)).toBe(coins);
      }),
    );
  });
});

describe('readCoins', () => {
  test.each([
    { text: '650.00', coins: 65_000 },
    { text: ' 650 ', coins: 65_000 },
    { text: '9.8', coins: 980 },
    { text: '-0.05', coins: -5 },
    { text: '9.801', coins: undefined },
    { text: '9,80', coins: undefined },
    { text: '1e3', coins: undefined },
    { text: '', coins: undefined },
  ])('"$text" is $coins', ({ text, coins }) => {
    expect(readCoins(text, 2)).toBe(coins);
  });
});
