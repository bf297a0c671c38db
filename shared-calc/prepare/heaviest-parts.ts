import type { Bench } from '#shared-calc/bench/open-bench.ts';
import { namesIn } from '#shared-calc/rule/tree.ts';

export interface MassPart {
  readonly line: string;
  readonly kg: number;
  /** Something in the build can be changed to make it lighter; a tank is as heavy as it is. */
  readonly canBeLighter: boolean;
}

/** Lines that a builder can make lighter without another tank. */
const lighter: ReadonlySet<string> = new Set([
  'drainage_mass',
  'capping_mass',
  'soil_mass',
  'litter_wet',
  'water_mass',
  'hardscape_mass',
  'panel_mass',
  'plant_mass',
  'lamps_mass',
]);

/** The parts that `filled_mass` adds up, heaviest first; those without a figure, or of nothing, are left out. */
export function heaviestParts(bench: Bench, column: string): readonly MassPart[] {
  if (!bench.input().lines.some((line) => line.name === 'filled_mass')) return [];
  const { rule } = bench.box(column, 'filled_mass');
  return (rule ? namesIn(rule) : [])
    .flatMap((line) => {
      const { value } = bench.box(column, line);
      return typeof value === 'number' && value > 0 ? [{ line, kg: value, canBeLighter: lighter.has(line) }] : [];
    })
    .toSorted((one, other) => other.kg - one.kg);
}
