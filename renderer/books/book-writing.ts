import { readClipboard, writeClipboard } from '#renderer/bench/clipboard-text.ts';
import { pastePlan } from '#renderer/bench/paste-plan.ts';
import { rectOf, type Range } from '#renderer/bench/range.ts';
import { boxAt, extentOf, type BookLayout } from './book-layout.ts';
import type { BookColumn, BookRow } from './book-table.ts';
import type { BoxText } from './write-boxes.ts';

/** A range as tab-separated text, as it would be written. */
export function copyFields<Row extends BookRow>(layout: BookLayout<Row>, range: Range): string {
  const { top, bottom, left, right } = rectOf(range);
  const columns = layout.columns.slice(left, right + 1);
  return writeClipboard(layout.rows.slice(top, bottom + 1).map((row) => columns.map((column) => column.entry(row))));
}

/** What pasted text would write where, what stays the same left out. */
export function pasteFields<Row extends BookRow>(
  layout: BookLayout<Row>,
  range: Range,
  text: string,
): readonly BoxText[] {
  return pastePlan(readClipboard(text), rectOf(range), extentOf(layout)).flatMap(({ text: each, ...spot }) => {
    const box = boxAt(layout, spot);
    if (!box || box.column.entry(box.row) === each) return [];
    return [{ row: box.row.id, column: box.column.key, text: each }];
  });
}

/** Fields of a range that can be written in, emptied. */
export function emptyFields<Row extends BookRow>(layout: BookLayout<Row>, range: Range): readonly BoxText[] {
  const { top, bottom, left, right } = rectOf(range);
  return layout.rows.slice(top, bottom + 1).flatMap((row) =>
    layout.columns
      .slice(left, right + 1)
      .filter((column) => column.write && column.entry(row) !== '')
      .map(({ key }) => ({ row: row.id, column: key, text: '' })),
  );
}

/** The first field of each line of a range into the others of that line; what cannot be written in is left alone. */
export function fillRight<Row extends BookRow>(layout: BookLayout<Row>, range: Range): readonly BoxText[] {
  const { left, right, top, bottom } = rectOf(range);
  const first = layout.columns[left];
  if (!first) return [];
  const columns = layout.columns.slice(left + 1, right + 1);
  return layout.rows.slice(top, bottom + 1).flatMap((row) => filled(row, columns, () => first.entry(row)));
}

/** The first line of a range into those below it. */
export function fillDown<Row extends BookRow>(layout: BookLayout<Row>, range: Range): readonly BoxText[] {
  const { left, right, top, bottom } = rectOf(range);
  const first = layout.rows[top];
  if (!first) return [];
  const columns = layout.columns.slice(left, right + 1);
  return layout.rows.slice(top + 1, bottom + 1).flatMap((row) => filled(row, columns, (column) => column.entry(first)));
}

function filled<Row extends BookRow>(
  row: Row,
  columns: readonly BookColumn<Row>[],
  textOf: (column: BookColumn<Row>) => string,
): readonly BoxText[] {
  return columns
    .filter((column) => column.write && column.entry(row) !== textOf(column))
    .map((column) => ({ row: row.id, column: column.key, text: textOf(column) }));
}
