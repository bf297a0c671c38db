import { describe, expect, test } from 'vitest';
import { listOr } from '#shared-calc/words/list-or.ts';

describe('listOr', () => {
  test.each([
    [[], ''],
    [['tube'], 'tube'],
    [['tube', 'tap'], 'tube or tap'],
    [['none', 'tube', 'tap'], 'none, tube or tap'],
  ])('%j is %j', (words, said) => {
    expect(listOr(words)).toBe(said);
  });
});
