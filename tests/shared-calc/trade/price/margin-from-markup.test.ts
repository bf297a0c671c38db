import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { markupFromMargin } from '#shared-calc/trade/price/markup-from-margin.ts';
import { marginFromMarkup } from '#shared-calc/trade/price/margin-from-markup.ts';

describe('marginFromMarkup', () => {
  // Worked by hand from the definitions of margin and mark-up.
  test.each([
    { as: '53.85 % added is a margin of 35.0 %', figures: [0.5385], gives: 0.35, digits: 3 },
    { as: '35 % added is only 25.9 %', figures: [0.35], gives: 0.259, digits: 3 },
    { as: 'nothing added is no margin', figures: [0], gives: 0, digits: 12 },
  ])('$as', ({ figures, gives, digits }) => {
    expect(marginFromMarkup.compute(figures)).toBeCloseTo(gives, digits);
  });

  test.each([
    { as: 'goods given away', figures: [-1], says: 'A mark-up of -100 % gives the goods away; no margin follows.' },
  ])('refuses $as', ({ figures, says }) => {
    expect(marginFromMarkup.compute(figures)).toEqual({ refused: says });
  });

  test('a margin and its mark-up lead back to each other', () => {
    fc.assert(
      fc.property(fc.double({ min: -0.9, max: 0.99, noNaN: true }), (margin) => {
        expect(marginFromMarkup.compute([Number(markupFromMargin.compute([margin]))])).toBeCloseTo(margin, 9);
      }),
    );
  });
});
