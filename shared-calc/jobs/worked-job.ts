import type { BenchInput } from '#shared-calc/bench/bench-input.ts';
import type { Bench } from '#shared-calc/bench/open-bench.ts';
import type { Pricing } from '#shared-calc/bench/order-sums.ts';
import { oldPricesIn, type PriceBook } from '#shared-calc/buy/price-book.ts';
import type { ColumnInput } from '#shared-calc/recipe/column.ts';
import type { Line } from '#shared-calc/records/records.ts';
import type { WorkingHouse } from './working-house.ts';
import { textsOf, type JobSheet, type SheetColumn, type WrittenByLine } from './job-sheet.ts';

/** A job's sheet, worked out, with its prices and rules. */
export interface WorkedJob {
  readonly sheet: JobSheet;
  readonly bench: Bench;
  readonly pricing: Pricing;
  readonly house: WorkingHouse;
}

/** The bench input of a sheet; columns are cached by the sheet's columns. */
export function sheetInput(
  sheet: Pick<JobSheet, 'columns' | 'whole'>,
  lines: readonly Line[],
  prices: PriceBook,
): BenchInput {
  return {
    lines,
    columns: sheet.columns.map(benchColumn),
    job: textsOf(sheet.whole),
    isOldPrice: oldPricesIn(prices),
  };
}

/** A size as a bench reads it, with who wrote what. */
export interface BenchColumn extends ColumnInput {
  /** The id of its record, or its key if it has none. */
  readonly size: string;
  readonly written: WrittenByLine;
}

const columns = new WeakMap<SheetColumn, BenchColumn>();

/** The bench column of a sheet's column, cached. */
export function benchColumn(column: SheetColumn): BenchColumn {
  const known = columns.get(column) ?? { ...column, written: column.locals, locals: textsOf(column.locals) };
  columns.set(column, known);
  return known;
}
