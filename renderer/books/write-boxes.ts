import { applyChange, emptyChange, isEmptyChange, squashChanges, type Change } from '#shared-calc/records/change.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { contextOf, type BookContext } from './book-hands.ts';
import type { BookColumn, BookRow, BookTable } from './book-table.ts';

/** A text for one field of one row. */
export interface BoxText {
  readonly row: string;
  readonly column: string;
  readonly text: string;
}

/** A field that was not taken, with the reason. */
export interface RefusedBox {
  readonly row: string;
  /** As the column is headed. */
  readonly column: string;
  readonly says: string;
}

/**
 * One change of the book from texts for several fields, each put in after the one before, so that two fields of
 * one record go together. Where any is refused, all are, each named.
 */
export function writeBoxes<Row extends BookRow>(
  table: BookTable<Row>,
  context: BookContext,
  texts: readonly BoxText[],
): Result<Change, readonly RefusedBox[]> {
  const changes: Change[] = [];
  const refused: RefusedBox[] = [];
  let now = laidOut(table, context);
  for (const { row, column, text } of texts) {
    const done = writeOne(now, { row, column, text });
    if (!done.ok) refused.push({ row, column: now.columns.get(column)?.title ?? column, says: done.fault });
    else if (!isEmptyChange(done.value)) {
      changes.push(done.value);
      now = laidOut(table, contextOf(applyChange(now.context.records, done.value), context.today));
    }
  }
  return refused.length > 0 ? failed(refused) : ok(oneOf(changes));
}

interface LaidOut<Row> {
  readonly context: BookContext;
  readonly rows: ReadonlyMap<string, Row>;
  readonly columns: ReadonlyMap<string, BookColumn<Row>>;
}

function laidOut<Row extends BookRow>(table: BookTable<Row>, context: BookContext): LaidOut<Row> {
  return {
    context,
    rows: new Map(table.rows(context).map((row) => [row.id, row])),
    columns: new Map(table.columns(context).map((column) => [column.key, column])),
  };
}

function writeOne<Row>(
  { rows, columns }: LaidOut<Row>,
  { row: id, column: key, text }: BoxText,
): Result<Change, string> {
  const row = rows.get(id);
  const column = columns.get(key);
  if (!row || !column) return failed('This row is no longer there.');
  if (text === column.entry(row)) return ok(emptyChange(''));
  if (!column.write) return failed(column.closed ?? `${column.title} is not written here.`);
  return column.write(row, text);
}

function oneOf(changes: readonly Change[]): Change {
  const [only, ...others] = changes;
  if (only && others.length === 0) return only;
  return squashChanges(changes.length === 0 ? '' : `${changes.length} fields`, changes);
}

/** Refused fields in one sentence: the first in full, the others counted. */
export function sayRefused(refused: readonly RefusedBox[]): string {
  const [first, ...others] = refused;
  if (!first) return '';
  const names = others.slice(0, 3).map(({ row, column }) => `${column.toLowerCase()} of ${row}`);
  const rest = others.length > names.length ? ` and ${others.length - names.length} more` : '';
  const also = others.length === 0 ? '' : ` Refused too: ${names.join(', ')}${rest}.`;
  return `Nothing was written. ${first.row}: ${first.says}${also}`;
}
