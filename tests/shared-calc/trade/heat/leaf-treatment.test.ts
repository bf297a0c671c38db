import { describe, expect, test } from 'vitest';
import { loadOf, suggestWay } from '#shared-calc/trade/heat/leaf-treatment.ts';

describe('suggestWay', () => {
  // Our own choice of a way and a load; how full is common practice, no source.
  test.each([
    ['clean', true, 'bake'],
    ['clean', false, 'boil'],
    ['sterile', true, 'steam'],
    ['sterile', false, 'steam'],
  ] as const)('for %s leaves, moistened 16 h before: %s, take %s', (aim, moistened, way) => {
    expect(suggestWay(aim, moistened)).toBe(way);
  });
});

describe('loadOf', () => {
  test('what is given stands, what is left out is the usual load of the way', () => {
    const leaves = { aim: 'clean', leavesL: 10, altitudeM: 0 } as const;
    expect([
      loadOf({ ...leaves, way: 'bake' }),
      loadOf({ ...leaves, way: 'boil', vesselL: 8 }),
      loadOf({ ...leaves, way: 'steam', fill: 0.5 }),
    ]).toEqual([
      { vesselL: 60, fill: 0.5 },
      { vesselL: 8, fill: 0.6 },
      { vesselL: 21, fill: 0.5 },
    ]);
  });
});
