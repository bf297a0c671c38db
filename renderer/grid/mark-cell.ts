import { holds, isSingle, rectOf, type Cell, type Selection } from './selection.ts';

/** Marks one drawn cell: in the selection, on the chosen row, the chosen cell. */
export function markCell(element: HTMLElement, cell: Cell | undefined, selection: Selection | undefined): void {
  const marks = cell && selection ? marksOf(cell, selection) : nowhere;
  element.classList.toggle('in-range', marks.inside && marks.many);
  element.classList.toggle('chosen', marks.tip);
  element.classList.toggle('here', marks.row);
  const selected = String(marks.inside);
  if (element.ariaSelected !== selected) element.ariaSelected = selected;
}

const nowhere = { inside: false, many: false, tip: false, row: false };

function marksOf(cell: Cell, selection: Selection): typeof nowhere {
  const { tip } = selection;
  const row = tip.row === cell.row;
  return {
    inside: holds(rectOf(selection), cell),
    many: !isSingle(selection),
    tip: row && tip.column === cell.column,
    row,
  };
}
