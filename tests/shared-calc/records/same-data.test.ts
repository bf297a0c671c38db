import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sameData } from '#shared-calc/records/same-data.ts';

describe('sameData', () => {
  test('a record copied is the same record', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (data) => {
        expect(sameData(data, structuredClone(data))).toBe(true);
      }),
    );
  });

  test.each([
    [
      { a: 1, b: 2 },
      { b: 2, a: 1 },
    ],
    [{ a: 1, b: undefined }, { a: 1 }],
    [{ a: [{ b: 0 }] }, { a: [{ b: -0 }] }],
  ])('%j is %j', (one, other) => {
    expect([sameData(one, other), sameData(other, one)]).toEqual([true, true]);
  });

  test.each([
    [{ a: 1 }, { a: 2 }],
    [{ a: 1 }, { a: 1, b: 2 }],
    [{ a: null }, {}],
    [
      [1, 2],
      [2, 1],
    ],
    [[1], [1, 1]],
    [[], {}],
    ['1', 1],
  ])('%j is not %j', (one, other) => {
    expect([sameData(one, other), sameData(other, one)]).toEqual([false, false]);
  });
});
