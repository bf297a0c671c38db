import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sortKeyPattern } from '#shared-calc/fields/recipe.ts';
import { sortKeyAt, sortKeyBetween } from '#shared-calc/records/sort-key.ts';

describe('sortKeyAt', () => {
  test('a list of a thousand lines stands in its order', () => {
    const keys = Array.from({ length: 1000 }, (_, at) => sortKeyAt(at + 1));

    expect(keys).toEqual(keys.toSorted());
    expect(keys.filter((key) => !sortKeyPattern.test(key))).toEqual([]);
  });
});

describe('sortKeyBetween', () => {
  test('a line put anywhere, again and again, stands where it was put', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { maxLength: 60 }), (places) => {
        const keys: string[] = [];
        for (const place of places) {
          const at = Math.round(place * keys.length);
          keys.splice(at, 0, sortKeyBetween(keys[at - 1], keys[at]));
        }

        expect(keys).toEqual(keys.toSorted());
        expect(new Set(keys).size).toBe(keys.length);
        expect(keys.filter((key) => !sortKeyPattern.test(key))).toEqual([]);
      }),
    );
  });

  test('between two keys of which one is as long as can be, there is a key', () => {
    expect(sortKeyBetween('0001i', '0001i1')).toBe('0001i0i');
    expect(sortKeyBetween(undefined, '0001')).toBe('0000i');
  });
});
