import { columnId, type GridIndex } from './grid-model.ts';
import { edgesOf, isSingle, rangesOf, type Cell, type Rect, type Selection, type Side } from './selection.ts';

/** Marks one drawn cell: in the selection, on the selected row, the selected cell. */
export function markCell(element: HTMLElement, cell: Cell | undefined, chosen: Chosen | undefined): void {
  const { edges, inRange, onRow, isTip } = cell && chosen ? marksOf(cell, chosen) : unmarked;
  if (inRange) element.dataset['inRange'] = edges?.join(' ');
  else delete element.dataset['inRange'];
  element.toggleAttribute('data-chosen', isTip);
  element.toggleAttribute('data-here', onRow);
  const selected = String(edges !== undefined);
  if (element.ariaSelected !== selected) element.ariaSelected = selected;
}

interface CellMarks {
  readonly edges: readonly Side[] | undefined;
  readonly inRange: boolean;
  readonly onRow: boolean;
  readonly isTip: boolean;
}

const unmarked: CellMarks = { edges: undefined, inRange: false, onRow: false, isTip: false };

function marksOf(cell: Cell, { tip, ranges, many }: Chosen): CellMarks {
  const edges = edgesOf(ranges, cell);
  const onRow = cell.row === tip.row;
  return { edges, inRange: many && edges !== undefined, onRow, isTip: onRow && cell.column === tip.column };
}

/** A selection as its cells are marked. */
export interface Chosen {
  readonly tip: Cell;
  readonly ranges: readonly Rect[];
  readonly many: boolean;
}

export function chosenOf(selection: Selection | undefined): Chosen | undefined {
  return selection && { tip: selection.tip, ranges: rangesOf(selection), many: !isSingle(selection) };
}

/** Marks the heading of the column that holds the selected cell. */
export function markHead(host: HTMLElement, { keyOf }: GridIndex, selection: Selection | undefined): void {
  const at = selection && columnId(selection.tip.column, keyOf(selection.tip)?.column ?? '');
  for (const head of host.querySelectorAll('.ag-header-cell'))
    head.toggleAttribute('data-at', head.getAttribute('col-id') === at);
}
