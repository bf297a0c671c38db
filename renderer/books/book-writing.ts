import { readClipboard, writeClipboard } from '#renderer/bench/clipboard-text.ts';
import { pastePlan } from '#renderer/bench/paste-plan.ts';
import { rectOf, type Range } from '#renderer/bench/range.ts';
import { boxAt, extentOf, type BookLayout } from './book-layout.ts';
import type { BookRow } from './book-table.ts';
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
