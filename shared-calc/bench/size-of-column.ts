import { tankShapes } from '#shared-calc/fields/tank.ts';
import type { UseName } from '#shared-calc/fields/uses.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { sizeWords } from '#shared-calc/recipe/size-words.ts';
import { boxFor } from './figure-for.ts';
import type { Bench } from './open-bench.ts';

/** The inside size that a column works with, in one sentence. */
export function sizeOfColumn(bench: Bench, column: string, display: Display): string {
  const sideOf = (use: UseName) => {
    const { value, typed, text, rule } = boxFor(bench, column, use) ?? {};
    return typeof value === 'number' ? { value, typed: typed && !rule ? text : undefined } : undefined;
  };
  const shape = boxFor(bench, column, 'tankShape')?.value;
  return sizeWords(tankShapes.find((each) => each === shape) ?? 'rectangle', sideOf, display);
}
