import type { BoxText } from './write-boxes.ts';
import type { BoxEditor } from '#renderer/bench/box-editor.tsx';
import { stepped, tabbed, type Extent, type Spot } from '#renderer/bench/range.ts';
import type { Onward } from '#renderer/writing/rule-keys.ts';
import { boxAt, extentOf, type BookLayout } from './book-layout.ts';
import type { BookRow } from './book-table.ts';
import { fieldHelp } from './field-help.ts';
import { speakField } from './paint-field.ts';

/** What the grid asks of its place. */
export interface BookGridActs {
  /** One change of all of them; a sentence where it is refused, and then nothing was written. */
  readonly write: (texts: readonly BoxText[]) => string | undefined;
  readonly refuse: (sentence: string) => void;
  /** The rows the range reaches over, the one of its tip first. */
  readonly choose: (rows: readonly string[]) => void;
  readonly add: () => void;
  readonly remove: () => void;
}

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
