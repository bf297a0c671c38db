import type { BenchInput } from '#shared-calc/bench/bench-input.ts';
import type { Bench } from '#shared-calc/bench/open-bench.ts';
import type { Pricing } from '#shared-calc/bench/order-sums.ts';
import { oldPricesIn, type PriceBook } from '#shared-calc/buy/price-book.ts';
import { joinLines } from '#shared-calc/bench/column-lines.ts';
import type { ColumnInput } from '#shared-calc/recipe/column.ts';
import type { Line } from '#shared-calc/records/records.ts';
import type { WorkingHouse } from './working-house.ts';
import { textsOf, type JobSheet, type SheetColumn, type WrittenByLine } from './job-sheet.ts';

/** A job's sheet, worked out, with its prices and rules. */
export interface WorkedJob {
  readonly sheet: JobSheet;
  /** The usual lines of its sizes. */
  readonly lines: readonly Line[];
  readonly bench: Bench;
  readonly pricing: Pricing;
  readonly house: WorkingHouse;
}

/** The bench input of a sheet on its usual lines; columns are cached by the sheet's columns. */
export function sheetInput(
  sheet: Pick<JobSheet, 'columns' | 'whole'>,
  lines: readonly Line[],
  prices: PriceBook,
): BenchInput {
  const columns = benchColumns(sheet, lines);
  return {
    lines: joinLines(columns.length === 0 ? [lines] : columns.map((column) => column.lines ?? lines)),
    columns,
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

/** The sizes of a sheet as a bench reads them; where they have several lists of lines, each says its own. */
export function benchColumns(sheet: Pick<JobSheet, 'columns'>, usual: readonly Line[]): readonly BenchColumn[] {
  const isMixed = sheet.columns.some(({ lines = usual }) => lines !== usual);
  return sheet.columns.map((column) => benchColumn(column, isMixed ? (column.lines ?? usual) : undefined));
}

const columns = new WeakMap<SheetColumn, BenchColumn>();

function benchColumn(column: SheetColumn, lines: readonly Line[] | undefined): BenchColumn {
  const known = columns.get(column);
  if (known && known.lines === lines) return known;
  const { lines: _, ...rest } = column;
  const made = { ...rest, written: column.locals, locals: textsOf(column.locals), ...(lines && { lines }) };
  columns.set(column, made);
  return made;
}

/** The lines of all recipes of a job, each name once; the usual ones first. */
export function allLines({ lines, bench }: Pick<WorkedJob, 'lines' | 'bench'>): readonly Line[] {
  return joinLines([lines, ...bench.input().columns.map(({ key }) => bench.lines(key))]);
}
