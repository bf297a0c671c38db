import type { ColumnInput } from '#shared-calc/recipe/column.ts';
import type { Line } from '#shared-calc/records/records.ts';

/** Everything that a size bench is worked out from. Unchanged parts are the same objects as before. */
export interface BenchInput {
  /** The recipe's lines, in order; of all recipes where its sizes have several. Those of a size: `Bench.lines`. */
  readonly lines: readonly Line[];
  readonly columns: readonly ColumnInput[];
  /** Texts of cells written over for the whole job. */
  readonly job: ReadonlyMap<string, string>;
  /** Whether a material's price is old on the day of pricing. */
  readonly isOldPrice: (material: string) => boolean;
}
