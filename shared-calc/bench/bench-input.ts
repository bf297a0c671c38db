import type { ColumnInput } from '#shared-calc/recipe/column.ts';
import type { Line } from '#shared-calc/records/records.ts';

/** Everything that a size bench is worked from. Parts that did not change are the same objects as before. */
export interface BenchInput {
  /** The recipe's lines, in order. */
  readonly lines: readonly Line[];
  readonly columns: readonly ColumnInput[];
  /** Boxes written over for the whole job. */
  readonly job: ReadonlyMap<string, string>;
  /** Whether a material's price is an old one on the day it is priced for. */
  readonly isOldPrice: (material: string) => boolean;
}
