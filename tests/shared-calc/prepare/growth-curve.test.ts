import { describe, expect, test } from 'vitest';
import { growthCurve } from '#shared-calc/prepare/growth-curve.ts';
import { demoRecords } from '#tests/demo-bench.ts';

const kinds = demoRecords().cultureKind;

describe('growthCurve', () => {
  // The sustained harvests of the culture book, from the logistic curve: the yield of a tub per harvest in the steady state.
  test.each([
    ['C1', 3194, 3000],
    ['C2', 2657, 2500],
    ['C3', 233, 200],
    ['C4', 119, 100],
  ])('a tub of %s comes to %d animals a harvest, over its set yield of %d', (id, sustained, set) => {
    const kind = kinds.get(id);
    if (!kind) throw new Error(id);
    const curve = growthCurve(kind, 3000);
    const harvests = curve.flatMap(({ day, animals }, at) => {
      const after = curve[at + 1];
      return after?.day === day ? [animals - after.animals] : [];
    });
    expect(Math.round(harvests.at(-1) ?? 0)).toBe(sustained);
    expect(kind.yield).toBe(set);
  });

  test('it starts from the founders, one point a day, two on a harvest day, and never outgrows the tub', () => {
    const kind = kinds.get('C1');
    if (!kind) throw new Error('C1');
    const curve = growthCurve(kind, 30);
    expect(curve[0]).toEqual({ day: 0, animals: 1250 });
    expect(curve.filter(({ day }) => day === 28).map(({ animals }) => Math.round(animals))).toEqual([6010, 3005]);
    expect(Math.max(...curve.map(({ animals }) => animals)) < kind.capacity).toBe(true);
  });

  test('flies have none: their tubs are used up', () => {
    const flies = kinds.get('C5');
    expect(flies && growthCurve(flies, 30)).toEqual([]);
  });
});
