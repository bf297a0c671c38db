import type { GridActs } from '#renderer/grid/grid-controller.ts';
import type { MenuPart } from '#renderer/kit/menu-list.tsx';
import { actNames } from '#shared-calc/words/act-names.ts';
import type { CellKey, CellText } from '#renderer/grid/grid-model.ts';
import { rangesOf } from '#renderer/grid/selection.ts';
import type { BookModel } from './book-model.ts';
import type { BookRow } from './book-table.ts';
import type { ViewActs } from './view-acts.ts';

/** What the grid asks of its view. */
export interface BookGridActs {
  /** Writes all texts as one change. Returns a sentence if it is refused; then nothing was written. */
  readonly write: (texts: readonly CellText[]) => string | undefined;
  readonly refuse: (sentence: string) => void;
  /** The rows in the selection, the row of its tip first. */
  readonly choose: (rows: readonly string[]) => void;
  readonly add: () => void;
  readonly remove: () => void;
  /** The acts of the selected rows. */
  readonly rowActs: () => readonly MenuPart[];
  readonly view: ViewActs;
}

/** The grid's acts on the fields of a book. */
export function bookGridActs<Row extends BookRow>(acts: BookGridActs, model: () => BookModel<Row>): GridActs {
  const isWritten = ({ column }: CellKey) => model().columnOf(column)?.write !== undefined;
  /** Skips texts that stay the same. */
  const write = (texts: readonly CellText[]) => {
    const changed = texts.filter((text) => model().copied(text) !== text.text);
    return changed.length === 0 ? undefined : acts.write(changed);
  };
  const clear = (cells: readonly CellKey[]) => {
    const refused = write(cells.filter(isWritten).map((cell) => ({ ...cell, text: '' })));
    if (refused !== undefined) acts.refuse(refused);
  };
  return {
    write: (texts, by) => {
      if (by === 'typed') return acts.write(texts);
      // Pasting over a field that cannot be edited is refused, by its name; otherwise it is left as it is.
      return write(by === 'paste' ? texts : texts.filter(isWritten));
    },
    clear,
    refuse: acts.refuse,
    menu: (at) => {
      const box = model().boxAt(at);
      const empty = { says: actNames.empty, keys: 'Delete', run: () => clear([at]) };
      const own = box?.column.write ? [empty, ...acts.rowActs()] : acts.rowActs();
      return { label: model().shownAt(at).spoken, acts: own };
    },
    chosen: (selection) => {
      const { rows } = model();
      const tip = rows[selection.tip.row]?.key;
      const chosen = rangesOf(selection).flatMap(({ top, bottom }) => rows.slice(top, bottom + 1));
      acts.choose(tip === undefined ? [] : [...new Set([tip, ...chosen.map(({ key }) => key)])]);
    },
    columnMenu: acts.view.columnMenu,
    heads: acts.view,
    ordered: acts.view.ordered,
    add: acts.add,
    remove: acts.remove,
  };
}
