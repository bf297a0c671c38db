import type { Day } from '#shared-calc/calendar/day.ts';
import { listColumns, type ListColumn } from '#shared-calc/fields/price-list-map.ts';
import { recordFields } from '#shared-calc/fields/record-fields.ts';
import type { EntryFault } from '#shared-calc/read/entry-fault.ts';
import { readListDay } from '#shared-calc/read/list-days.ts';
import { readListPack, type ListPackFault, type WrittenPack } from '#shared-calc/read/list-pack.ts';
import { readSheet, type ListSheet, type SheetFault, type SheetRow } from '#shared-calc/read/list-sheet.ts';
import type { Workshop } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { takeMoneyApart } from '#shared-calc/read/list-money.ts';
import {
  columnAt,
  findColumns,
  knownHeadings,
  ownHeadings,
  type ColumnNames,
  type ColumnsFault,
  type FoundColumns,
} from './price-list-columns.ts';
import { findDialect, type Dialect } from './price-list-dialect.ts';
import { foreignMarks, readListPrice, type ListPriceFault } from './price-list-money.ts';

/** What is wrong with a list as a whole. */
export type ListFault = SheetFault | ColumnsFault | { readonly kind: 'no-day'; readonly headings: readonly string[] };

export type ListCellFault =
  | { readonly kind: 'row-length'; readonly has: number; readonly wants: number }
  | { readonly kind: 'hidden-signs'; readonly column: ListColumn }
  | { readonly kind: 'cell-too-long'; readonly column: ListColumn; readonly most: number }
  | ListPackFault
  | ListPriceFault
  | EntryFault;

/** A row of a list, each of its cells read for itself. */
export interface ListRow {
  readonly row: number;
  readonly article: string;
  /** One of our own codes. */
  readonly material: string;
  readonly label: string;
  /** The cells as they are written, pack and unit in one. */
  readonly written: { readonly pack: string; readonly price: string; readonly from: string };
  readonly pack: Result<WrittenPack, ListPackFault>;
  readonly priceCoins: Result<number, ListCellFault>;
  readonly from: Result<Day, EntryFault>;
  /** Only the program's own lists name it. */
  readonly supplier?: string;
  /** Why no cell of the row can be trusted. */
  readonly fault?: ListCellFault;
}

export interface PriceList {
  readonly dialect: Dialect;
  readonly headings: readonly string[];
  readonly columns: FoundColumns;
  /** The list is one that the program wrote. */
  readonly isOwn: boolean;
  readonly rows: readonly ListRow[];
}

export interface ListReading extends ColumnNames {
  readonly workshop: Workshop;
}

/**
 * Reads a supplier's price list, every cell for itself: no row hangs on another. What the map does not say is taken from
 * the list, then from what was remembered, then from the workshop.
 */
export function readPriceList(text: string, reading: ListReading): Result<PriceList, ListFault> {
  const read = readSheet(text, knownHeadings(reading));
  if (!read.ok) return read;
  const columns = findColumns(read.value.heading, reading);
  if (!columns.ok) return columns;
  const sheet = withHeading(read.value, columns.value);
  const { heading: headings } = sheet;
  const usualDay = reading.map?.from ?? reading.remembered?.from;
  if (columns.value.from === undefined && usualDay === undefined) return failed({ kind: 'no-day', headings });
  const isOwn = !reading.map?.columns && ownHeadings.every((name) => headings.includes(name));
  const context = contextOf({ sheet, columns: columns.value, usualDay, isOwn }, reading);
  const rows = sheet.rows.map((row) => readRow(row, context));
  return ok({ headings, columns: columns.value, dialect: context.dialect, isOwn, rows });
}

/** A first row with an amount of money for its price is no heading: the list has none. */
function withHeading(sheet: ListSheet, { price = -1 }: FoundColumns): ListSheet {
  const { heading, rows } = sheet;
  if (takeMoneyApart(heading[price] ?? '') === undefined) return sheet;
  const counted = rows.map(({ row, cells }) => ({ row: row + 1, cells }));
  return { ...sheet, heading: heading.map((_, at) => columnAt(at)), rows: [{ row: 1, cells: heading }, ...counted] };
}

interface FoundSheet extends Pick<RowContext, 'columns' | 'usualDay'> {
  readonly sheet: ListSheet;
  readonly isOwn: boolean;
}

function contextOf({ sheet, columns, usualDay, isOwn }: FoundSheet, reading: ListReading): RowContext {
  const [prices, days] = [cellsIn(sheet, columns.price), cellsIn(sheet, columns.from)];
  const ownDelimiter = isOwn ? (sheet.delimiter ?? '') : '';
  const { workshop } = reading;
  return {
    columns,
    usualDay,
    dialect: findDialect({ prices, days, ownDelimiter }, reading),
    width: sheet.heading.length,
    workshop,
    marks: foreignMarks(prices, workshop),
    supplierAt: isOwn ? sheet.heading.indexOf('supplier') : -1,
  };
}

function cellsIn({ rows }: ListSheet, at: number | undefined): readonly string[] {
  return at === undefined ? [] : rows.map(({ cells }) => cells[at] ?? '');
}

interface RowContext {
  readonly dialect: Dialect;
  readonly columns: FoundColumns;
  readonly usualDay: Day | undefined;
  readonly width: number;
  readonly workshop: Workshop;
  readonly marks: readonly string[];
  readonly supplierAt: number;
}

function readRow({ row, cells }: SheetRow, context: RowContext): ListRow {
  const { columns, dialect, supplierAt } = context;
  const cell = (column: ListColumn) => cells[columns[column] ?? -1] ?? '';
  const fault = rowFault(cells, context);
  return {
    row,
    article: cell('article'),
    material: cell('material'),
    label: cell('label'),
    written: { pack: `${cell('pack')} ${cell('unit')}`.trim(), price: cell('price'), from: cell('from') },
    pack: readListPack(cell('pack'), cell('unit'), dialect.decimal),
    priceCoins: readListPrice(cell('price'), { ...context, decimal: dialect.decimal }),
    from: readFrom(cell('from'), context),
    ...(supplierAt >= 0 && { supplier: cells[supplierAt] ?? '' }),
    ...(fault && { fault }),
  };
}

function readFrom(text: string, { usualDay, dialect }: RowContext): ListRow['from'] {
  if (text === '' && usualDay !== undefined) return ok(usualDay);
  return readListDay(text, recordFields.packPrice.from.heading, dialect.dates);
}

/** The most letters of a cell: what a label may have. */
const MOST_LETTERS = 2_000;
const MOST_OF_ARTICLE = 60;
/** Control characters, and those that turn the direction of what is shown. */
const hidden = /[\p{Cc}\u202a-\u202e\u2066-\u2069]/u;

function rowFault(cells: readonly string[], { columns, width }: RowContext): ListCellFault | undefined {
  const last = Math.max(...Object.values(columns));
  const isRagged = cells.length > width ? cells.slice(width).some((cell) => cell !== '') : cells.length <= last;
  if (isRagged) return { kind: 'row-length', has: cells.length, wants: width };
  for (const column of listColumns) {
    const cell = cells[columns[column] ?? -1] ?? '';
    const most = column === 'article' ? MOST_OF_ARTICLE : MOST_LETTERS;
    if (hidden.test(cell)) return { kind: 'hidden-signs', column };
    if (cell.length > most) return { kind: 'cell-too-long', column, most };
  }
  return undefined;
}
