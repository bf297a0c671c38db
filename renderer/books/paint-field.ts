import { makeElement, makeSign } from '#renderer/bench/make-element.ts';
import type { Box } from './book-layout.ts';
import type { BookRow } from './book-table.ts';

/** The inside of a field; readers hear one sentence in place of what is painted. */
export function paintField<Row extends BookRow>(box: Box<Row>): HTMLElement {
  const { row, column } = box;
  const painted = makeElement('span', column.write ? 'field' : 'field closed');
  painted.setAttribute('aria-hidden', 'true');
  painted.dataset['look'] = column.look;
  const flag = column.flag?.(row);
  if (flag) {
    const said = makeElement('span', 'said');
    said.dataset['state'] = flag.look;
    said.append(makeSign(flag.sign), flag.says);
    painted.append(said);
    painted.dataset['state'] = flag.look;
  }
  painted.append(makeElement('span', 'fig', column.show(row)));
  const both = makeElement('span', 'spoken');
  both.append(painted, makeElement('span', 'unseen', speakField(box)));
  return both;
}

/** "Dam height, T07, 150 mm", "Price, T07, 214.00 cr, old price", "Note, T07, empty". */
export function speakField<Row extends BookRow>({ row, column }: Box<Row>): string {
  const { title, unit } = column;
  const shown = column.show(row);
  const figure = shown === '' ? 'empty' : unit === '' ? shown : `${shown} ${unit}`;
  return [title, row.id, figure, column.flag?.(row)?.says ?? ''].filter((part) => part !== '').join(', ');
}

/** While this is the same, a field needs no new paint. */
export function paintedAs<Row extends BookRow>({ row, column }: Box<Row>): string {
  return `${column.show(row)}\n${column.flag?.(row)?.says ?? ''}`;
}
