import type { BoxEditor } from '#renderer/bench/box-editor.tsx';
import { stepped, tabbed, type Extent, type Spot } from '#renderer/bench/range.ts';
import type { Onward } from '#renderer/writing/rule-field.tsx';
import type { BookGridActs } from './book-grid.ts';
import { boxAt, extentOf, type BookLayout } from './book-layout.ts';
import type { BookRow } from './book-table.ts';
import { fieldHelp } from './field-help.ts';
import { speakField } from './paint-field.ts';

export interface FieldOpening<Row extends BookRow> {
  readonly layout: BookLayout<Row>;
  readonly spot: Spot;
  readonly typed: string | undefined;
  readonly editor: BoxEditor;
  readonly acts: BookGridActs;
  readonly cell: () => HTMLElement | undefined;
  /** Where the keyboard goes once the field is closed. */
  readonly goOn: (spot: Spot) => void;
}

/** Opens the editor over a field, or says why it is not written in. */
export function openField<Row extends BookRow>(opening: FieldOpening<Row>): void {
  const { layout, spot, typed, editor, acts, cell, goOn } = opening;
  const box = boxAt(layout, spot);
  if (!box) return;
  const { row, column } = box;
  if (!column.write) {
    acts.refuse(column.closed ?? `${column.title} is not written here.`);
    return;
  }
  const entry = column.entry(row);
  let next = spot;
  editor.open({
    cell,
    entry,
    ...(typed === undefined ? {} : { typed }),
    label: speakField(box),
    help: fieldHelp(box),
    settle: (text, onward) => {
      const refused = text === entry ? undefined : acts.write([{ row: row.id, column: column.key, text }]);
      if (refused === undefined) next = spotAfter(extentOf(layout), spot, onward);
      return refused;
    },
    closed: () => goOn(next),
  });
}

function spotAfter(extent: Extent, spot: Spot, onward: Onward): Spot {
  if (onward === 'stay') return spot;
  if (onward === 'up' || onward === 'down') return stepped(extent, spot, onward, false);
  return tabbed(extent, spot, onward === 'left') ?? spot;
}
