import type { BenchInput } from '#shared-calc/bench/bench-input.ts';
import type { Bench } from '#shared-calc/bench/open-bench.ts';
import type { Pricing } from '#shared-calc/bench/order-sums.ts';
import { oldPricesIn, type PriceBook } from '#shared-calc/buy/price-book.ts';
import type { ColumnInput } from '#shared-calc/recipe/column.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { textsOf, type JobSheet, type SheetColumn } from './job-sheet.ts';

/** A job's sheet, worked, and what it is bought and priced by. */
export interface WorkedJob {
  readonly sheet: JobSheet;
  readonly bench: Bench;
  readonly pricing: Pricing;
}

/** What the bench of a sheet reads; its columns are the same objects for the same columns of a sheet. */
export function sheetInput(
  sheet: Pick<JobSheet, 'columns' | 'whole'>,
  lines: readonly Line[],
  prices: PriceBook,
): BenchInput {
  return {
    lines,
    columns: sheet.columns.map(columnInput),
    job: textsOf(sheet.whole),
    isOldPrice: oldPricesIn(prices),
  };
}

const inputs = new WeakMap<SheetColumn, ColumnInput>();

function columnInput(column: SheetColumn): ColumnInput {
  const known = inputs.get(column) ?? { ...column, locals: textsOf(column.locals) };
  inputs.set(column, known);
  return known;
}
