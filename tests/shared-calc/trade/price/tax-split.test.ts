import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { taxSplit } from '#shared-calc/trade/price/tax-split.ts';

const rates = new Map([
  ['standard', 0.12],
  ['low', 0.04],
]);
const lines = [
  { coins: 100_000, taxClass: 'standard' },
  { coins: 16_500, taxClass: 'low' },
  { coins: 28_925, taxClass: 'standard' },
];

describe('taxSplit', () => {
  test('1,289.25 at 12 % and 165.00 at 4 % come to 1,615.56', () => {
    expect(taxSplit(lines, { rates, included: false })).toEqual({
      net: 145_425,
      classes: [
        { taxClass: 'standard', net: 128_925, tax: 15_471 },
        { taxClass: 'low', net: 16_500, tax: 660 },
      ],
      tax: 16_131,
      gross: 161_556,
    });
  });

  test('tax is worked on the class sum, not line by line', () => {
    const four = Array.from({ length: 4 }, () => ({ coins: 4, taxClass: 'standard' }));
    expect(taxSplit(four, { rates, included: false })).toMatchObject({ net: 16, tax: 2 });
  });

  test('tax that is in the price is taken out of it', () => {
    expect(taxSplit([{ coins: 11_200, taxClass: 'standard' }], { rates, included: true })).toEqual({
      net: 10_000,
      classes: [{ taxClass: 'standard', net: 10_000, tax: 1200 }],
      tax: 1200,
      gross: 11_200,
    });
  });

  test('nothing sold bears no tax', () => {
    expect(taxSplit([], { rates, included: false })).toEqual({ net: 0, classes: [], tax: 0, gross: 0 });
  });

  test.each([
    { as: 'a class without a rate', line: { coins: 1, taxClass: 'odd' }, says: 'No tax rate for class odd; add one.' },
    { as: 'half a coin', line: { coins: 0.5, taxClass: 'low' }, says: 'A line of 0.5 is not in whole coins.' },
    {
      as: 'a rate below zero',
      line: { coins: 1, taxClass: 'broken' },
      says: 'The tax rate of class broken cannot be below zero.',
    },
  ])('refuses $as', ({ line, says }) => {
    expect(taxSplit([line], { rates: new Map([...rates, ['broken', -0.1]]), included: false })).toEqual({
      refused: says,
    });
  });

  test('with tax in them or not, net and tax add up to the gross', () => {
    const priced = fc.record({
      coins: fc.integer({ min: -100_000, max: 1_000_000 }),
      taxClass: fc.constantFrom('standard', 'low'),
    });
    fc.assert(
      fc.property(fc.array(priced, { maxLength: 20 }), (some) => {
        const sum = some.reduce((all, each) => all + each.coins, 0);
        expect(taxSplit(some, { rates, included: true })).toMatchObject({ gross: sum });
        expect(taxSplit(some, { rates, included: false })).toMatchObject({ net: sum });
      }),
    );
  });
});
