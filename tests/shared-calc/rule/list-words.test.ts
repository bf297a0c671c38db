import { describe, expect, test } from 'vitest';
import { listAnd, listOr } from '#shared-calc/rule/list-words.ts';

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

describe('listAnd', () => {
  test.each([
    [[], ''],
    [['keeper'], 'keeper'],
    [['keeper', 'vet', 'owner'], 'keeper, vet and owner'],
  ])('%j is %j', (words, said) => {
    expect(listAnd(words)).toBe(said);
  });
});
