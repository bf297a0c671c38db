import { describe, expect, test } from 'vitest';
import { roundCoins } from '#shared-calc/trade/price/coin-rounding.ts';
import { marginFromMarkup } from '#shared-calc/trade/price/margin-from-markup.ts';
import { markupFromMargin } from '#shared-calc/trade/price/markup-from-margin.ts';
import { priceFromMargin } from '#shared-calc/trade/price/price-from-margin.ts';
import { priceFromMarkup } from '#shared-calc/trade/price/price-from-markup.ts';

describe('mark-up on the cost and margin on the price', () => {
  // worked from the definitions: mark-up on the cost, margin on the price
  test('cost 100, price 125: mark-up 25 %, margin 20 %', () => {
    expect([priceFromMarkup.compute([100, 0.25]), marginFromMarkup.compute([0.25])]).toEqual([
      125,
      expect.closeTo(0.2, 12),
    ]);
  });

  // worked from the definitions
  test('cost 10, mark-up 50 %: price 15, margin 33.33 %', () => {
    expect([priceFromMarkup.compute([10, 0.5]), marginFromMarkup.compute([0.5])]).toEqual([
      15,
      expect.closeTo(0.3333, 4),
    ]);
  });

  // worked from the definitions
  test('cost 5: a margin of 30 % is 7.14, a mark-up of 30 % only 6.50', () => {
    expect([priceFromMargin.compute([5, 0.3]), priceFromMarkup.compute([5, 0.3])]).toEqual([
      expect.closeTo(7.14, 2),
      expect.closeTo(6.5, 9),
    ]);
  });

  // worked from the definitions
  test('a margin of 40 % is a mark-up of 66.67 %', () => {
    expect(markupFromMargin.compute([0.4])).toBeCloseTo(0.6667, 4);
  });

  test('a margin of 1 or more has no price', () => {
    const refused = { refused: "Margin is a share of the price and stays below 1. For 'add 60 %' use mark-up." };
    expect([priceFromMargin.compute([100, 1]), markupFromMargin.compute([1.5])]).toEqual([refused, refused]);
  });
});

describe('rounding to the coin', () => {
  // worked from IEEE 754: what binary makes of prices
  test('1.005 and 2.675 go up to 1.01 and 2.68 as on paper', () => {
    expect([roundCoins(1.005 * 100), roundCoins(2.675 * 100)]).toEqual([101, 268]);
  });

  // ISO 80000-1:2009 Annex B, rule B, in tenths; from memory
  test.each([
    [12.223, 122],
    [12.251, 123],
    [12.275, 123],
    [12.25, 123],
    [12.35, 124],
  ])('%d in tenths is %d, a tie up, in one step', (figure, tenths) => {
    expect(roundCoins(figure * 10)).toBe(tenths);
  });
});
