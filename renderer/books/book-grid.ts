import { gridController, type GridController } from '#renderer/grid/grid-controller.ts';
import type { GridLayout } from '#renderer/grid/grid-table.ts';
import { single, type Cell } from '#renderer/grid/selection.ts';
import { bookGridActs, type BookGridActs } from './book-grid-acts.ts';
import type { BookModel } from './book-model.ts';
import type { BookRow } from './book-table.ts';
import { fieldPaint, type PaintedField } from './paint-field.ts';
import { remNow } from './view-acts.ts';
import css from './book.module.css';

export interface BookGrid<Row extends BookRow> {
  readonly show: (model: BookModel<Row>) => void;
  /** Selects a field, scrolls it into view and focuses it; `false` if there is no such row. */
  readonly go: (row: string, column?: string) => boolean;
  /** The same, and opens it. */
  readonly write: (row: string, column?: string) => void;
  readonly destroy: () => void;
}

export interface BookGridParts<Row extends BookRow> {
  readonly host: HTMLElement;
  readonly nonce: string | undefined;
  readonly label: string;
  readonly model: BookModel<Row>;
  readonly acts: BookGridActs;
}

/** A book's grid: one record a row, one field a column. */
export function bookGrid<Row extends BookRow>(parts: BookGridParts<Row>): BookGrid<Row> {
  const { host, nonce, label } = parts;
  let { model } = parts;
  const grid: GridController<PaintedField> = gridController({
    host,
    nonce,
    label,
    model,
    layout: bookLayout(() => model),
    paint: fieldPaint,
    fills: 'both ways',
    acts: bookGridActs(parts.acts, () => model),
  });
  const go = (row: string, column?: string): Cell | undefined => {
    const first = model.columns[Math.min(1, model.columns.length - 1)];
    const cell = grid.index().cellOf({ row, column: column ?? first?.key ?? '' });
    if (cell) grid.take(single(cell));
    return cell;
  };
  return {
    show: (next) => {
      model = next;
      grid.show(next);
    },
    go: (row, column) => go(row, column) !== undefined,
    write: (row, column) => {
      const cell = go(row, column);
      if (cell) grid.open(cell);
    },
    destroy: grid.destroy,
  };
}

/** Height of a row, 24 px, in rem. Heads have two lines. */
const ROW = 1.5;
const HEAD = 2.5;
/** Up to this width, in rem, the page has one column. */
const NARROW = 60;

function bookLayout<Row extends BookRow>(model: () => BookModel<Row>): GridLayout {
  const isNarrow = () => window.innerWidth <= NARROW * remNow();
  return {
    column: (index, key) => {
      const { look, width = 0 } = model().columnOf(key) ?? {};
      return {
        ...(look === 'figure' && { headerClass: css['figureHead'] ?? '' }),
        width: Math.round(width * remNow()),
        ...(index === 0 && { pinned: isNarrow() ? null : 'left' }),
        cellClass: (index === 0 ? css['name'] : css['box']) ?? '',
        wrapHeaderText: true,
      };
    },
    headHeight: () => Math.round(HEAD * remNow()),
    rowHeight: () => Math.round(ROW * remNow()),
    isNarrow,
    looks: {},
  };
}
