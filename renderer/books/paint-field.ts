import type { CellPaint } from '#renderer/grid/live-cells.ts';
import { makeElement, makeFigure, makeSaid, makeSign, spokenAs } from '#renderer/grid/make-element.ts';
import type { BookColumn, BookFlag, BookRow, Box } from './book-table.ts';
import css from './book.module.css';

/** The display text of a field, and its text for screen readers. */
export interface PaintedField {
  readonly figure: string;
  readonly look: BookColumn<BookRow>['look'];
  readonly closed: boolean;
  readonly flag: BookFlag | undefined;
  /** "Dam height, T07, 150 mm", "Price, T07, 214.00 cr, old price", "Note, T07, empty". */
  readonly spoken: string;
}

const noField: PaintedField = { figure: '', look: 'words', closed: true, flag: undefined, spoken: '' };

export function paintedField<Row extends BookRow>(box: Box<Row> | undefined): PaintedField {
  if (!box) return noField;
  const { row, column } = box;
  const { title, look } = column;
  const unit = column.hasUnit?.(row) ? '' : column.unit;
  const figure = column.show(row);
  const flag = column.flag?.(row);
  const read = figure === '' ? 'empty' : unit === '' ? figure : `${figure} ${unit}`;
  const spoken = [title, row.id, read, flag?.says ?? ''].filter((part) => part !== '').join(', ');
  return { figure, look, closed: column.write === undefined, flag, spoken };
}

export const fieldPaint: CellPaint<PaintedField> = {
  paint: paintField,
  same: (one, other) => one.figure === other.figure && one.spoken === other.spoken,
  onlyFigure: () => undefined,
  spoken: ({ spoken }) => spoken,
  closed: ({ closed }) => closed,
};

function paintField({ figure, look, closed, flag, spoken }: PaintedField): HTMLElement {
  const painted = makeElement('span', css['field']);
  painted.dataset['look'] = look;
  painted.toggleAttribute('data-closed', closed);
  if (flag) {
    painted.dataset['state'] = flag.look;
    painted.append(makeSaid(makeSign(flag.sign), flag.says));
  }
  painted.append(makeFigure(figure));
  return spokenAs(painted, spoken);
}
