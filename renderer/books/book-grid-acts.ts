import type { GridActs } from '#renderer/grid/grid-controller.ts';
import type { CellKey, CellText } from '#renderer/grid/grid-model.ts';
import { rectOf } from '#renderer/grid/selection.ts';
import type { BookModel } from './book-model.ts';
import type { BookRow } from './book-table.ts';

/** What the grid asks of its view. */
export interface BookGridActs {
  /** Writes all texts as one change. Returns a sentence if it is refused; then nothing was written. */
  readonly write: (texts: readonly CellText[]) => string | undefined;
  readonly refuse: (sentence: string) => void;
  /** The rows in the selection, the row of its tip first. */
  readonly choose: (rows: readonly string[]) => void;
  readonly add: () => void;
  readonly remove: () => void;
}

/** The grid's acts on the fields of a book. */
export function bookGridActs<Row extends BookRow>(acts: BookGridActs, model: () => BookModel<Row>): GridActs {
  const isWritten = ({ column }: CellKey) => model().columnOf(column)?.write !== undefined;
  /** Skips texts that stay the same. */
  const write = (texts: readonly CellText[]) => {
    const changed = texts.filter((text) => model().copied(text) !== text.text);
    const refused = changed.length === 0 ? undefined : acts.write(changed);
    if (refused !== undefined) acts.refuse(refused);
  };
  return {
    enter: (text) => acts.write([text]),
    // Filling skips a field that cannot be edited; pasting over it is refused.
    write: (texts, by) => write(by === 'fill' ? texts.filter(isWritten) : texts),
    clear: (cells) => write(cells.filter(isWritten).map((cell) => ({ ...cell, text: '' }))),
    refuse: acts.refuse,
    chosen: (selection) => {
      const { rows } = model();
      const { top, bottom } = rectOf(selection);
      const tip = rows[selection.tip.row]?.key;
      const others = rows.slice(top, bottom + 1).flatMap(({ key }) => (key === tip ? [] : [key]));
      acts.choose(tip === undefined ? [] : [tip, ...others]);
    },
    add: acts.add,
    remove: acts.remove,
  };
}
