import { applyChange, emptyChange, isEmptyChange, squashChanges, type Change } from '#shared-calc/records/change.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { type BookContext } from './book-api.ts';
import type { BookColumn, BookRow, BookTable } from './book-table.ts';

/** A text for one field of one row. */
export interface BoxText {
  readonly row: string;
  readonly column: string;
  readonly text: string;
}

/** A field that was refused, with the reason. */
export interface RefusedBox {
  readonly row: string;
  /** The column's heading. */
  readonly column: string;
  readonly says: string;
}

/**
 * One change of the book from texts for several fields. Each is applied after the one before, so that two fields of
 * one record can be set together. If any is refused, all are, each named.
 *
 * Rows do not read each other. One round therefore takes a field of every row, and the table is rebuilt once a round
 * and not once a field.
 */
export function writeBoxes<Row extends BookRow>(
  table: BookTable<Row>,
  context: BookContext,
  texts: readonly BoxText[],
): Result<Change, readonly RefusedBox[]> {
  const written: Written = { changes: [], refused: [] };
  let now = laidOut(table, context);
  let left: readonly Numbered[] = texts.map((text, at) => ({ ...text, at }));
  while (left.length > 0) {
    const round = writeRound(now, left, written);
    left = round.left;
    if (left.length > 0)
      now = laidOut(table, context.update(applyChange(now.context.records, squashChanges('', round.changes))));
  }
  if (written.refused.length > 0) return failed(inOrder(written.refused).map(({ refused }) => refused));
  return ok(oneOf(inOrder(written.changes).map(({ change }) => change)));
}

/** A text with its index among those given. */
type Numbered = BoxText & { readonly at: number };

interface Written {
  readonly changes: { readonly at: number; readonly change: Change }[];
  readonly refused: { readonly at: number; readonly refused: RefusedBox }[];
}

interface Round {
  readonly changes: readonly Change[];
  /** Texts of rows that have changed, or whose record another row has changed: they need the table rebuilt first. */
  readonly left: readonly Numbered[];
}

function writeRound<Row>(now: LaidOut<Row>, texts: readonly Numbered[], written: Written): Round {
  const changes: Change[] = [];
  const left: Numbered[] = [];
  const changed = new Set<string>();
  for (const text of texts) {
    const done = changed.has(`row ${text.row}`) ? undefined : writeOne(now, text);
    if (done && !done.ok) written.refused.push(refusedOf(now, text, done.fault));
    else if (!done || recordsOf(done.value).some((record) => changed.has(record))) {
      left.push(text);
      changed.add(`row ${text.row}`);
    } else if (!isEmptyChange(done.value)) {
      changes.push(done.value);
      written.changes.push({ at: text.at, change: done.value });
      for (const each of [`row ${text.row}`, ...recordsOf(done.value)]) changed.add(each);
    }
  }
  return { changes, left };
}

function refusedOf<Row>({ columns }: LaidOut<Row>, { at, row, column }: Numbered, says: string): Written['refused'][0] {
  return { at, refused: { row, column: columns.get(column)?.title ?? column, says } };
}

function recordsOf({ added, updated, removed }: Change): readonly string[] {
  return [
    ...[...added, ...removed].map(({ kind, record }) => `record ${kind} ${record.id}`),
    ...updated.map(({ kind, to }) => `record ${kind} ${to.id}`),
  ];
}

function inOrder<T extends { readonly at: number }>(some: readonly T[]): readonly T[] {
  return some.toSorted((one, other) => one.at - other.at);
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
