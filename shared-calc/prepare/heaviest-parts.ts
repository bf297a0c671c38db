import type { Bench } from '#shared-calc/bench/open-bench.ts';
import { isAs, lineFor } from '#shared-calc/recipe/lines-by-use.ts';
import { namesIn } from '#shared-calc/rule/tree.ts';

export interface MassPart {
  readonly line: string;
  readonly kg: number;
  /** The build can be changed to make it lighter; false for the tank itself. */
  readonly canBeLighter: boolean;
}

/** The parts that the filled weight adds up, heaviest first; parts of zero or without a figure are left out. */
export function heaviestParts(bench: Bench, column: string): readonly MassPart[] {
  const filled = lineFor(bench.lines(column), 'filledMass');
  const { rule } = filled ? bench.box(column, filled.name) : {};
  return (rule ? namesIn(rule) : [])
    .flatMap((name) => {
      const { value, line } = bench.box(column, name);
      return typeof value === 'number' && value > 0
        ? [{ line: name, kg: value, canBeLighter: isAs(line, 'mass') }]
        : [];
    })
    .toSorted((one, other) => other.kg - one.kg);
}
