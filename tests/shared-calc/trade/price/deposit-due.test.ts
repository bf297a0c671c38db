import { describe, expect, test } from 'vitest';
import { depositDue } from '#shared-calc/trade/price/deposit-due.ts';

const usual = { gross: 161_556, share: 0.4, step: 500, floorCost: 18_000 };

describe('depositDue', () => {
  // Worked by hand; shares and steps are common practice, no source.
  test.each([
    { as: '40 % of 1,615.56 in steps of 5.00 is 650.00', of: {}, gives: 65_000 },
    { as: 'what is cut for the job is the least', of: { gross: 40_000, floorCost: 18_100 }, gives: 18_500 },
    { as: 'without a step it goes up to the coin', of: { step: 0 }, gives: 64_623 },
    { as: 'a step that fits stays', of: { gross: 162_500 }, gives: 65_000 },
    { as: 'nothing sold asks for nothing', of: { gross: 0, floorCost: 0 }, gives: 0 },
  ])('$as', ({ of, gives }) => {
    expect(depositDue({ ...usual, ...of })).toBe(gives);
  });

  test.each([
    { as: '40 typed for 40 %', of: { share: 40 }, says: 'The deposit is a share from 0 to 1; you gave 40.' },
    { as: 'a gross below zero', of: { gross: -1 }, says: 'Gross cannot be below zero.' },
    { as: 'half a coin of step', of: { step: 0.5 }, says: 'The step must be in whole coins.' },
  ])('refuses $as', ({ of, says }) => {
    expect(depositDue({ ...usual, ...of })).toEqual({ refused: says });
  });
});
