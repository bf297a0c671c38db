import fc from 'fast-check';
import { tankShapes, type TankSizes } from '#shared-calc/trade/geometry/tank-floor.ts';

/** In thousandths, so that no figure is so small that a rule takes it for 0. */
function mm(least: number, most: number): fc.Arbitrary<number> {
  return fc.integer({ min: least * 1000, max: most * 1000 }).map((thousandths) => thousandths / 1000);
}

/** Any possible tank: a bow up to the half circle, a return shorter than the side. */
export const anyTank: fc.Arbitrary<TankSizes> = fc
  .record({
    shape: fc.constantFrom(...tankShapes),
    length: mm(100, 3000),
    depth: mm(100, 3000),
    bow: mm(0, 1),
    side: mm(0, 0.99),
  })
  .map(({ shape, length, depth, bow, side }) => ({
    shape,
    length,
    depth,
    bow: (bow * length) / 2,
    side_return: side * length,
  }));

/** The measurements in the order of a function's arguments. */
export function asArguments(sizes: TankSizes): readonly [string, number, number, number, number] {
  return [sizes.shape, sizes.length, sizes.depth, sizes.bow, sizes.side_return];
}
