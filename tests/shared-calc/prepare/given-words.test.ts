import { describe, expect, test } from 'vitest';
import { givenWords } from '#shared-calc/prepare/given-words.ts';
import { plainDisplay } from '#shared-calc/quantity/shown-unit.ts';

describe('givenWords', () => {
  const comma = { ...plainDisplay, decimalComma: true };
  test.each([
    [100, 'kg', plainDisplay, '100\u00a0kg'],
    [1200, 'kg', plainDisplay, '1,200\u00a0kg'],
    [62.5, 'kg', plainDisplay, '62.5\u00a0kg'],
    [1200, 'kg', comma, '1.200\u00a0kg'],
    [62.5, 'kg', comma, '62,5\u00a0kg'],
    [0, 'kg', plainDisplay, '0\u00a0kg'],
    [650, 'm', plainDisplay, '650\u00a0m'],
    [4.5, 'money', plainDisplay, '4.50\u00a0cr'],
    ['full', 'choice', plainDisplay, 'full'],
    [true, 'yes_no', plainDisplay, 'yes'],
  ])('%s in %s', (value, unit, display, words) => {
    expect(givenWords(value, unit, display)).toBe(words);
  });
});
