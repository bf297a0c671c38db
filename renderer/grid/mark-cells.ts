import { columnId, type GridColumn } from './grid-model.ts';
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

/** Marks one drawn cell as moved by the last edit. */
export function markMovedCell(element: HTMLElement, isMoved: boolean): void {
  if (element.hasAttribute('data-moved') === isMoved) return;
  element.toggleAttribute('data-moved', isMoved);
  element.ariaDescription = isMoved ? 'moved by the last edit' : null;
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

/** Marks the heading of the column that holds the selected cell, and those by which rows are sorted and filtered. */
export function markHeads(host: HTMLElement, columns: readonly GridColumn[], selection: Selection | undefined): void {
  const byId = new Map(columns.map((column, at) => [columnId(at, column.key), { column, at }]));
  for (const head of host.querySelectorAll('.ag-header-cell')) {
    const { column, at } = byId.get(head.getAttribute('col-id') ?? '') ?? {};
    head.toggleAttribute('data-at', at !== undefined && at === selection?.tip.column);
    head.toggleAttribute('data-filtered', column?.filtered === true);
    if (column?.sorted) head.setAttribute('aria-sort', column.sorted === 'up' ? 'ascending' : 'descending');
    else head.removeAttribute('aria-sort');
  }
}
