import type { GridApi, GridOptions, RowClassRules } from 'ag-grid-community';
import type { Desk } from './bench-writing.ts';
import { rowKey } from './bench-positions.ts';
import type { BenchMetrics } from './bench-metrics.ts';
import { columnId, gridColumns, stripOf } from './grid-columns.ts';
import type { ColumnParts } from './grid-columns.ts';
import { gridTable } from './grid-table.ts';
import type { CellMark } from './mouse-range.ts';
import type { Spot } from './range.ts';
import type { BenchRow, BenchView } from './view-model.ts';

/** The grid itself, spoken to in the bench's own terms. */
export interface BenchTable {
  readonly metrics: () => BenchMetrics;
  readonly bring: (spot: Spot) => void;
  /** Brings it into sight and gives it the keyboard. */
  readonly focus: (spot: Spot) => void;
  readonly cellAt: (spot: Spot) => HTMLElement | undefined;
  readonly spotOf: (mark: CellMark, desk: Desk) => Spot;
  /** Rows and columns of another view, where they differ from those before; answers whether they do. */
  readonly show: (before: BenchView, next: BenchView, metrics: BenchMetrics) => boolean;
  /** Sizes anew. */
  readonly lay: (view: BenchView, metrics: BenchMetrics) => void;
  readonly scrolled: (run: () => void) => void;
  readonly destroy: () => void;
}

export interface BenchTableParts extends ColumnParts {
  readonly host: HTMLElement;
  readonly nonce: string | undefined;
  /** The view as it stands. */
  readonly shown: () => BenchView;
  /** The grid moved its focus, by mouse or by a key of its own. */
  readonly focused: (spot: Spot) => void;
}

export function benchTable(parts: BenchTableParts): BenchTable {
  const { host, state, shown, nonce } = parts;
  const api = gridTable<BenchRow>(host, 'Size bench, one line a row, one size a column', nonce, firstOptions(parts));
  return {
    metrics: () => state.metrics.peek(),
    bring: (spot) => bringSpot(api, spot, shown()),
    focus: (spot) => {
      bringSpot(api, spot, shown());
      focusSpot(api, spot, shown());
    },
    cellAt: (spot) => cellAt(host, spot, shown()),
    spotOf: (mark, desk) => spotAt(mark, desk.view),
    show: (before, next, metrics) => {
      const columns = columnKeys(before) !== columnKeys(next);
      const rows = rowKeys(before) !== rowKeys(next);
      if (columns) api.setGridOption('columnDefs', gridColumns(next, metrics, parts));
      if (rows) api.setGridOption('rowData', [...next.rows]);
      return columns || rows;
    },
    lay: (view, metrics) => {
      api.setGridOption('columnDefs', gridColumns(view, metrics, parts));
      api.setGridOption('headerHeight', metrics.head + metrics.plank);
      api.setGridOption('domLayout', metrics.narrow ? 'autoHeight' : 'normal');
      api.resetRowHeights();
    },
    scrolled: (run) => api.addEventListener('bodyScroll', run),
    destroy: () => api.destroy(),
  };
}

function firstOptions(parts: BenchTableParts): GridOptions<BenchRow> {
  const { state, shown } = parts;
  const view = shown();
  const metrics = state.metrics.peek();
  return {
    columnDefs: gridColumns(view, metrics, parts),
    rowData: [...view.rows],
    pinnedBottomRowData: [...view.foot],
    getRowId: ({ data }) => rowKey(data),
    getRowHeight: ({ data }) => rowHeight(data, state.metrics.peek()),
    rowClassRules,
    headerHeight: metrics.head + metrics.plank,
    domLayout: metrics.narrow ? 'autoHeight' : 'normal',
    rowBuffer: 6,
    // The event may come after the next one: what stands now is asked for.
    onCellFocused: ({ api }) => {
      const cell = api.getFocusedCell();
      if (!cell) return;
      const mark = { row: cell.rowIndex, pinned: cell.rowPinned === 'bottom', column: cell.column.getColId() };
      parts.focused(spotAt(mark, shown()));
    },
  };
}

const rowClassRules: RowClassRules<BenchRow> = {
  'section-head': ({ data }) => data?.kind === 'section',
  open: ({ data }) => data?.kind === 'section' && data.open,
  sum: ({ data }) => data?.kind === 'foot',
  hours: ({ data }) => data?.kind === 'foot' && data.id === 'hours',
  price: ({ data }) => data?.kind === 'foot' && data.id === 'gross',
  flags: ({ data }) => data?.kind === 'foot' && data.id === 'flags',
};

function spotAt({ row, pinned, column }: CellMark, view: BenchView): Spot {
  const strip = view.columns.findIndex((each) => each.key === stripOf(column));
  return { row: pinned ? view.rows.length + row : row, column: strip + 1 };
}

function bringSpot(api: GridApi<BenchRow>, { row, column }: Spot, view: BenchView): void {
  if (row < view.rows.length) api.ensureIndexVisible(row);
  api.ensureColumnVisible(columnId(view.columns[column - 1]?.key));
}

function focusSpot(api: GridApi<BenchRow>, { row, column }: Spot, view: BenchView): void {
  const lines = view.rows.length;
  const name = columnId(view.columns[column - 1]?.key);
  if (row < lines) api.setFocusedCell(row, name);
  else api.setFocusedCell(row - lines, name, 'bottom');
}

function cellAt(host: HTMLElement, { row, column }: Spot, view: BenchView): HTMLElement | undefined {
  const lines = view.rows.length;
  const index = row < lines ? String(row) : `b-${row - lines}`;
  const name = CSS.escape(columnId(view.columns[column - 1]?.key));
  return host.querySelector<HTMLElement>(`[row-index="${index}"] .ag-cell[col-id="${name}"]`) ?? undefined;
}

function rowHeight(row: BenchRow | undefined, metrics: BenchMetrics): number {
  if (!row || row.kind === 'line') return metrics.line;
  if (row.kind === 'section') return metrics.section;
  if (row.id === 'gross') return metrics.price;
  if (row.id === 'flags') return metrics.flags;
  return row.id === 'hours' ? metrics.foot + 4 : metrics.foot;
}

function columnKeys(view: BenchView): string {
  return view.columns.map((column) => column.key).join('\n');
}

function rowKeys(view: BenchView): string {
  return view.rows.map((row) => (row.kind === 'section' ? `${rowKey(row)} ${row.open}` : rowKey(row))).join('\n');
}
