import { failed, ok, type Result } from '#shared-calc/result.ts';
import { readHtmlTable } from './html-table.ts';
import { readSeparated } from './separated-text.ts';

export interface SheetRow {
  /** Counts from 1 under the heading. */
  readonly row: number;
  readonly cells: readonly string[];
}

/** A table as a file or the clipboard has it. */
export interface ListSheet {
  readonly heading: readonly string[];
  /** Without blank ones, which count. */
  readonly rows: readonly SheetRow[];
  /** Left out for a table of HTML. */
  readonly delimiter?: string;
}

export type SheetFault = { readonly kind: 'no-rows' } | { readonly kind: 'too-many-rows'; readonly most: number };

/** More rows are no list of one supplier. */
const MOST_ROWS = 100_000;
/** The heading lies within so many records of the start; titles may stand above it. */
const HEADING_WITHIN = 30;
/** Records that tell the delimiter. */
const SAMPLE = 200;

const delimiters = [';', ',', '\t', '|'];

type Cells = readonly string[];

/**
 * Finds the delimiter and the heading of a table. `known` counts the headings of a row that somebody reads; without
 * any, the heading is the first row that is as wide as most and more than half filled.
 */
export function readSheet(text: string, known: (cells: Cells) => number): Result<ListSheet, SheetFault> {
  const whole = text.replace(/^\ufeff/, '').replaceAll('\u0000', '');
  const table = /^\s*</.test(whole) ? readHtmlTable(whole) : undefined;
  if (table) return sheetOf(table, known);
  const [best] = delimiters
    .map((delimiter) => ({ delimiter, ...rankOf(readSeparated(whole, delimiter, SAMPLE), known) }))
    .toSorted((one, other) => other.known - one.known || other.alike - one.alike || other.width - one.width);
  const delimiter = best?.delimiter ?? ',';
  const sheet = sheetOf(readSeparated(whole, delimiter, MOST_ROWS + HEADING_WITHIN + 1), known);
  return sheet.ok ? ok({ ...sheet.value, delimiter }) : sheet;
}

/** How well a delimiter takes a text apart. */
function rankOf(records: readonly Cells[], known: (cells: Cells) => number) {
  const width = usualWidth(records);
  const filled = records.filter(isFilled);
  const alike = width > 1 ? filled.filter((cells) => cells.length === width).length : 0;
  return { known: Math.max(0, ...records.slice(0, HEADING_WITHIN).map((cells) => known(cells))), alike, width };
}

function usualWidth(records: readonly Cells[]): number {
  const counts = Map.groupBy(records.filter(isFilled), (cells) => cells.length);
  const [first] = [...counts].toSorted(([wide, some], [other, more]) => more.length - some.length || other - wide);
  return first?.[0] ?? 0;
}

function sheetOf(records: readonly Cells[], known: (cells: Cells) => number): Result<ListSheet, SheetFault> {
  const at = headingAt(records, known);
  const heading = (records[at] ?? []).map(tidyCell);
  const body = records.slice(at + 1);
  if (body.length > MOST_ROWS) return failed({ kind: 'too-many-rows', most: MOST_ROWS });
  const rows = body
    .map((cells, index) => ({ row: index + 1, cells: cells.map(tidyCell) }))
    .filter(({ cells }) => isFilled(cells));
  return rows.length === 0 ? failed({ kind: 'no-rows' }) : ok({ heading, rows });
}

function headingAt(records: readonly Cells[], known: (cells: Cells) => number): number {
  const first = records.slice(0, HEADING_WITHIN);
  const counts = first.map((cells) => known(cells));
  const most = Math.max(0, ...counts);
  if (most > 0) return counts.indexOf(most);
  const width = usualWidth(records.slice(0, SAMPLE));
  const isHeading = (cells: Cells) => cells.length === width && filledIn(cells) * 2 > width;
  return Math.max(0, first.findIndex(isHeading));
}

function filledIn(cells: Cells): number {
  return cells.filter((cell) => cell.trim() !== '').length;
}

function isFilled(cells: Cells): boolean {
  return cells.some((cell) => cell.trim() !== '');
}

/** A cell on one line, without blanks around it, signs of no width, and the apostrophe that keeps words from being run. */
function tidyCell(cell: string): string {
  return cell
    .replaceAll(/[\u200b-\u200f\u2060\ufeff]/g, '')
    .replaceAll(/\s+/g, ' ')
    .trim()
    .replace(/^'(?=[=+\-@\uff1d\uff0b\uff0d\uff20])/, '');
}
