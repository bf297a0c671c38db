import type { UseName } from '#shared-calc/fields/uses.ts';
import { fromBase, unitOf } from '#shared-calc/quantity/unit.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import { lineFor } from '#shared-calc/recipe/lines-by-use.ts';
import type { Box } from './bench-types.ts';
import type { Bench } from './open-bench.ts';

/** The cell of a size that has a use; `undefined` if the recipe has no such line. */
export function boxFor(bench: Bench, column: string, use: UseName): Box | undefined {
  const line = lineFor(bench.lines(column), use);
  return line && bench.box(column, line.name);
}

/** The figure of a use in a unit; `undefined` if the recipe has no such line, or its cell no figure. */
export function figureFor(bench: Bench, column: string, use: UseName, unit: string): number | undefined {
  return inUnit(boxFor(bench, column, use)?.value, unit);
}

/** The value of a cell in a unit; `undefined` if it is no figure. */
export function inUnit(value: Box['value'], unit: string): number | undefined {
  return typeof value === 'number' ? cleanNoise(fromBase(value, unitOf(unit))) : undefined;
}
