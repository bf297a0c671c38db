import { describe, expect, test } from 'vitest';
import { saidAmount, saidPacks, saidUnit } from '#shared-calc/papers/goods-said.ts';

describe('saidAmount', () => {
  test.each([
    [1, 'each', '1 piece'],
    [7, 'each', '7 pieces'],
    [45, 'L', '45 L'],
    [0.249546, 'm2', '0.2495 m²'],
    [0.5050000000000001, 'm', '0.505 m'],
  ])('%s %s', (amount, unit, said) => {
    expect(saidAmount(amount, unit)).toBe(said);
  });

  test('with the sign that the workshop writes', () => {
    expect(saidAmount(0.249546, 'm2', { decimalComma: true })).toBe('0,2495 m²');
  });
});

describe('saidPacks', () => {
  test.each([
    [2, { amount: 45, unit: 'L' }, '2 × 45 L'],
    [1, { amount: 1, unit: 'each' }, '1 piece'],
    [4, { amount: 1, unit: 'each' }, '4 pieces'],
    [3, { amount: 5, unit: 'each' }, '3 × 5 pieces'],
  ])('%s of %o', (count, pack, said) => {
    expect(saidPacks(count, pack)).toBe(said);
  });
});

describe('saidUnit', () => {
  test.each([
    ['m2', 'm²'],
    ['m3', 'm³'],
    ['L', 'L'],
  ])('%s is said %s', (unit, said) => {
    expect(saidUnit(unit)).toBe(said);
  });
});
