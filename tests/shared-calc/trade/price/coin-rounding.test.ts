import { describe, expect, test } from 'vitest';
import { coinsUpToStep, roundCoins } from '#shared-calc/trade/price/coin-rounding.ts';

describe('roundCoins', () => {
  // Worked by hand.
  test.each([
    [100.5, 101],
    [100.49999999999999, 101], // 1.005 x 100 in binary
    [100.49, 100],
    [-0.5, 0],
    [-1.5, -1],
    [0, 0],
  ])('%d coins are %d, half up', (exact, rounded) => {
    expect(roundCoins(exact)).toBe(rounded);
  });
});

describe('coinsUpToStep', () => {
  test.each([
    [64_622.4, 500, 65_000],
    [65_000, 500, 65_000],
    [139_954, 500, 140_000],
    [139_954, 0, 139_954],
  ])('%d coins in steps of %d are %d', (coins, step, up) => {
    expect(coinsUpToStep(coins, step)).toBe(up);
  });
});
