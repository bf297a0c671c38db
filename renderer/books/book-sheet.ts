import { gridTable } from '#renderer/bench/grid-table.ts';
import type { CellMark } from '#renderer/bench/mouse-range.ts';
import type { Spot } from '#renderer/bench/range.ts';
import { bookColumns, columnId, columnIndex, type ColumnParts, type GridRow } from './book-columns.ts';
import type { BookLayout } from './book-layout.ts';
import type { BookRow } from './book-table.ts';

/** The grid itself, spoken to by rows and columns of the book. */
export interface BookSheet {
  readonly focus: (spot: Spot) => void;
  readonly cellAt: (spot: Spot) => HTMLElement | undefined;
  readonly spotOf: (mark: CellMark) => Spot | undefined;
  /** Every drawn cell. */
  readonly each: (visit: (cell: HTMLElement, row: string, column: number) => void) => void;
  /** Shows what the layout has become. */
  readonly show: () => void;
  readonly scrolled: (run: () => void) => void;
  readonly destroy: () => void;
}

export interface BookSheetParts<Row extends BookRow> extends Pick<ColumnParts<Row>, 'layout' | 'mark'> {
  readonly host: HTMLElement;
  readonly nonce: string | undefined;
  /** The grid moved its focus, by mouse or by a key of its own. */
  readonly focused: (spot: Spot) => void;
}

/** Rows of 24 px and heads of two lines, in rem. */
const ROW = 1.5;
const HEAD = 2.5;
/** At this width, in rem, and less the page is one column. */
const NARROW = 60;

export function bookSheet<Row extends BookRow>({ host, nonce, layout, mark, focused }: BookSheetParts<Row>): BookSheet {
  const columns = () => bookColumns({ layout, mark, rem: remNow(), narrow: isNarrow() });
  const api = gridTable<GridRow>(host, layout().table.label, nonce, {
    columnDefs: columns(),
    rowData: rowsOf(layout()),
    getRowId: ({ data }) => data.id,
    rowHeight: Math.round(ROW * remNow()),
    headerHeight: Math.round(HEAD * remNow()),
    suppressHeaderFocus: true,
    domLayout: isNarrow() ? 'autoHeight' : 'normal',
  });
  // The grid tells of a focus after the next may have come already: only where it is now counts.
  api.addEventListener('cellFocused', () => {
    const at = api.getFocusedCell();
    if (at) focused({ row: at.rowIndex, column: columnIndex(at.column.getColId()) });
  });
  let heads = headsOf(layout());
  return {
    focus: ({ row, column }) => {
      api.ensureIndexVisible(row);
      api.ensureColumnVisible(columnId(column));
      api.setFocusedCell(row, columnId(column));
    },
    cellAt: ({ row, column }) =>
      host.querySelector<HTMLElement>(`[row-index="${row}"] .ag-cell[col-id="${columnId(column)}"]`) ?? undefined,
    spotOf: ({ row, column }) => ({ row, column: columnIndex(column) }),
    each: (visit) => eachCell(host, layout(), visit),
    show: () => {
      const next = headsOf(layout());
      if (next !== heads) api.setGridOption('columnDefs', columns());
      heads = next;
      api.setGridOption('rowData', rowsOf(layout()));
    },
    scrolled: (run) => api.addEventListener('bodyScroll', run),
    destroy: () => api.destroy(),
  };
}

function rowsOf<Row extends BookRow>({ rows }: BookLayout<Row>): GridRow[] {
  return rows.map(({ id }) => ({ id }));
}

function headsOf<Row extends BookRow>({ columns }: BookLayout<Row>): string {
  return columns.map(({ title, unit }) => `${title} ${unit}`).join('\n');
}

function eachCell<Row extends BookRow>(
  host: HTMLElement,
  { rows }: BookLayout<Row>,
  visit: (cell: HTMLElement, row: string, column: number) => void,
): void {
  for (const cell of host.querySelectorAll<HTMLElement>('.ag-cell[col-id]')) {
    const row = rows[Number(cell.closest('[row-index]')?.getAttribute('row-index'))];
    if (row) visit(cell, row.id, columnIndex(cell.getAttribute('col-id') ?? ''));
  }
}

function remNow(): number {
  return Number.parseFloat(getComputedStyle(document.documentElement).fontSize) || 16;
}

function isNarrow(): boolean {
  return window.innerWidth <= NARROW * remNow();
}
