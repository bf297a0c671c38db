import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Dimension } from '#shared-calc/quantity/dimension.ts';
import { figureKind, figureKindOfUnit, plainUnitOf, type FigureKind } from '#shared-calc/quantity/kind.ts';
import { readFigure } from '#shared-calc/quantity/read-figure.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import { fromBase, unitOf } from '#shared-calc/quantity/unit.ts';

/** Every kind of figure that a product or a quotient can have. */
const exponent = fc.integer({ min: -4, max: 4 });
const kinds: fc.Arbitrary<FigureKind> = fc
  .tuple(exponent, exponent, exponent, exponent, exponent, exponent)
  .filter((of) => of.some((each) => each !== 0))
  .map((of: Dimension) => figureKind(of));

describe('the plain unit of a kind', () => {
  test('a figure of any compound kind is written and read back as the same figure of the same kind', () => {
    fc.assert(
      fc.property(kinds, fc.double({ min: 1e-3, max: 1e6, noNaN: true }), (kind, value) => {
        const unit = plainUnitOf(kind);
        const written = `${cleanNoise(fromBase(value, unitOf(unit)))} ${unit}`;
        const read = readFigure(written, { unit: 'number' });
        if (!read.ok) throw new Error(`${written}: ${read.fault.kind}`);
        expect(figureKindOfUnit(read.value.unit).dimension).toEqual(kind.dimension);
        expect(read.value.value / value).toBeCloseTo(1, 11);
      }),
    );
  });

  test.each<[Readonly<Partial<Record<number, number>>>, string]>([
    [{ 0: 1, 1: 1 }, 'm.kg'],
    [{ 0: 4 }, 'm.m.m.m'],
    [{ 0: -1 }, 'each/m'],
    [{ 1: 1, 0: -3 }, 'kg/L'],
    [{ 4: 1, 2: -2 }, 'money/s/s'],
  ])('of %j is %s', (exponents, unit) => {
    const of = (at: number) => exponents[at] ?? 0;
    expect(plainUnitOf(figureKind([of(0), of(1), of(2), of(3), of(4), of(5)]))).toBe(unit);
  });
});
