import type { ColDef } from 'ag-grid-community';
import { HeadCell } from './head-cell.ts';
import type { HeadState } from './head-card.tsx';
import type { BenchMetrics } from './bench-metrics.ts';
import type { LiveCell, LiveCells } from './live-cells.ts';
import type { BenchRow, BenchView } from './view-model.ts';

export const namesColumn = 'names';

export interface ColumnParts {
  readonly state: HeadState;
  readonly cells: LiveCells;
  /** Marks a cell that was just drawn. */
  readonly mark: (live: LiveCell) => void;
}

/** The names and one column a size, as wide as the room allows. */
export function gridColumns(view: BenchView, metrics: BenchMetrics, parts: ColumnParts): ColDef<BenchRow>[] {
  const names: ColDef<BenchRow> = {
    ...columnOf(undefined, parts),
    width: metrics.names,
    pinned: 'left',
    cellAriaRole: 'rowheader',
  };
  return [names, ...view.columns.map(({ key }) => ({ ...columnOf(key, parts), width: metrics.strip }))];
}

function columnOf(strip: string | undefined, { state, cells, mark }: ColumnParts): ColDef<BenchRow> {
  return {
    colId: columnId(strip),
    headerName: strip ?? 'Lines',
    headerComponent: HeadCell,
    headerComponentParams: { state, strip },
    cellClass: strip === undefined ? 'named' : 'box',
    suppressHeaderKeyboardEvent: ({ event }) => belongsToCard(event),
    cellRenderer: (given: { readonly data?: BenchRow; readonly eGridCell: HTMLElement }) => {
      if (!given.data) return document.createElement('span');
      const live = { cell: given.eGridCell, row: given.data, column: strip };
      mark(live);
      return cells.draw(live);
    },
  };
}

/** Keys within a card are its fields' own; from the head itself Tab goes into the card. */
function belongsToCard(event: KeyboardEvent): boolean {
  if (!(event.target instanceof Element)) return false;
  return (
    event.target.closest('.card') !== null ||
    (event.key === 'Tab' && !event.shiftKey && event.target.querySelector('.card') !== null)
  );
}

/** The grid's own name of a column: a strip's key could be anything, the names' is ours. */
export function columnId(strip: string | undefined): string {
  return strip === undefined ? namesColumn : `strip ${strip}`;
}

export function stripOf(columnName: string): string | undefined {
  return columnName === namesColumn ? undefined : columnName.replace(/^strip /, '');
}
