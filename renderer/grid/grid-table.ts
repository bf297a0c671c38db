import {
  CellStyleModule,
  ColumnAutoSizeModule,
  ClientSideRowModelApiModule,
  ClientSideRowModelModule,
  ColumnApiModule,
  EventApiModule,
  ModuleRegistry,
  PinnedRowModule,
  ScrollApiModule,
  CellApiModule,
  RowApiModule,
  RowStyleModule,
  createGrid,
  createTheme,
} from 'ag-grid-community';
import type { ColDef, GridOptions, RowClassParams } from 'ag-grid-community';
import { columnId, type CellKey, type GridModel, type GridRow } from './grid-model.ts';
import type { CellMark } from './mouse-selection.ts';
import type { Cell } from './selection.ts';
import css from './grid.module.css';

ModuleRegistry.registerModules([
  ClientSideRowModelApiModule,
  ColumnAutoSizeModule,
  CellApiModule,
  CellStyleModule,
  ClientSideRowModelModule,
  ColumnApiModule,
  EventApiModule,
  PinnedRowModule,
  RowApiModule,
  RowStyleModule,
  ScrollApiModule,
]);

/** No styling from the library: our own style draws every line and edge. */
const theme = createTheme().withParams({
  backgroundColor: 'transparent',
  foregroundColor: 'inherit',
  fontFamily: 'inherit',
  fontSize: 'var(--type-3)',
  borderColor: 'transparent',
  borderRadius: 0,
  wrapperBorder: false,
  wrapperBorderRadius: 0,
  rowBorder: false,
  columnBorder: false,
  headerRowBorder: false,
  headerColumnBorder: false,
  pinnedRowBorder: false,
  pinnedColumnBorder: false,
  headerBackgroundColor: 'transparent',
  headerTextColor: 'inherit',
  oddRowBackgroundColor: 'transparent',
  cellHorizontalPadding: 0,
  cellTextColor: 'inherit',
  rangeSelectionBorderColor: 'transparent',
});

/** Layout of a grid; read again by `lay` and when rows or columns change. */
export interface GridLayout {
  readonly column: (index: number, key: string) => ColDef<GridRow>;
  /** All in px. */
  readonly headHeight: () => number;
  readonly rowHeight: (row: GridRow) => number;
  /** The page has one column: the grid is as high as its rows. */
  readonly isNarrow: () => boolean;
  /** The class of each look that a row can have. */
  readonly looks: Readonly<Record<string, string | undefined>>;
}

export interface GridTableParts {
  readonly host: HTMLElement;
  readonly label: string;
  readonly nonce: string | undefined;
  readonly layout: GridLayout;
  readonly model: () => GridModel<unknown>;
  /** Returns the content of a cell that is about to be drawn. */
  readonly draw: (cell: HTMLElement, at: CellKey) => HTMLElement;
  /** The grid moved its focus, by mouse or by one of its own keys. */
  readonly focused: (cell: Cell) => void;
  /** Tab came from outside; `false` if there is no cell to go to. */
  readonly entered: () => boolean;
  /** A column was drawn to a width, px; absent if columns keep theirs. */
  readonly widened?: (column: string, px: number) => void;
  /** The columns were drawn to another order; absent if they stay in theirs. */
  readonly ordered?: (columns: readonly string[]) => void;
}

/** The library's grid, addressed by cells. */
export interface GridTable {
  readonly bring: (cell: Cell) => void;
  /** Scrolls the cell into view and focuses it. */
  readonly focus: (cell: Cell) => void;
  readonly elementOf: (cell: Cell) => HTMLElement | undefined;
  readonly cellOf: (mark: CellMark) => Cell;
  /** Updates rows and columns if they differ from the previous model; returns whether they do. */
  readonly show: (before: GridModel<unknown>) => boolean;
  /** Focuses what stands at the edge of the grid, from where Tab goes on; always true. */
  readonly leave: (back: boolean) => true;
  readonly relayout: () => void;
  readonly scrolled: (run: () => void) => void;
  readonly destroy: () => void;
}

export function gridTable(parts: GridTableParts): GridTable {
  const { host, layout, model } = parts;
  const api = createGrid<GridRow>(host, firstOptions(parts));
  const takeFocus = speakOfGrid(parts);
  const edges = edgesOf(host);
  keepFocusMark(host);
  const idOf = (column: number) => columnId(column, model().columns[column]?.key ?? '');
  const bring = ({ row, column }: Cell) => {
    if (row < lineCount(model())) api.ensureIndexVisible(row);
    api.ensureColumnVisible(idOf(column));
  };
  return {
    bring,
    focus: (cell) => {
      bring(cell);
      const at = indexOf(cell.row, model());
      api.setFocusedCell(at.index, idOf(cell.column), at.pinned ? 'bottom' : null);
    },
    elementOf: ({ row, column }) => {
      const at = indexOf(row, model());
      const index = at.pinned ? `b-${at.index}` : String(at.index);
      return (
        host.querySelector<HTMLElement>(`[row-index="${index}"] .ag-cell[col-id="${CSS.escape(idOf(column))}"]`) ??
        undefined
      );
    },
    cellOf: (mark) => cellOf(mark, model()),
    show: (before) => {
      const next = model();
      const columns = columnWords(before) !== columnWords(next);
      const rows = rowWords(before) !== rowWords(next);
      if (columns) api.setGridOption('columnDefs', columnDefs(parts));
      if (rows) api.setGridOption('rowData', linesOf(next));
      if (rows) takeFocus();
      return columns || rows;
    },
    leave: (back) => {
      edges[back ? 'first' : 'last'].focus();
      return true;
    },
    relayout: () => {
      api.setGridOption('columnDefs', columnDefs(parts));
      api.setGridOption('headerHeight', layout.headHeight());
      api.setGridOption('domLayout', layout.isNarrow() ? 'autoHeight' : 'normal');
      api.resetRowHeights();
    },
    scrolled: (run) => api.addEventListener('bodyScroll', run),
    destroy: () => api.destroy(),
  };
}

/** Turns off the library's sorting, editing and animation. */
function firstOptions(parts: GridTableParts): GridOptions<GridRow> {
  const { layout, model, nonce } = parts;
  return {
    ...columnEvents(parts),
    theme,
    ...(nonce === undefined ? {} : { styleNonce: nonce }),
    animateRows: false,
    // Each row moved by `transform` would be a paint layer of its own.
    suppressRowTransform: true,
    suppressRowHoverHighlight: true,
    suppressMovableColumns: parts.ordered === undefined,
    suppressMoveWhenColumnDragging: true,
    suppressDragLeaveHidesColumns: true,
    suppressNoRowsOverlay: true,
    suppressScrollOnNewData: true,
    suppressTouch: true,
    ensureDomOrder: true,
    rowBuffer: 6,
    suppressHeaderFocus: true,
    // From outside, Tab comes to the chosen cell.
    focusGridInnerElement: () => parts.entered(),
    defaultColDef: { sortable: false, resizable: parts.widened !== undefined },
    columnDefs: columnDefs(parts),
    rowData: linesOf(model()),
    pinnedBottomRowData: model().rows.slice(lineCount(model())),
    getRowId: ({ data }) => data.key,
    getRowHeight: ({ data }) => (data ? layout.rowHeight(data) : undefined),
    rowClassRules: Object.fromEntries(
      Object.entries(layout.looks).map(([look, name]) => [
        name ?? look,
        ({ data }: RowClassParams<GridRow>) => data?.looks.includes(look) ?? false,
      ]),
    ),
    headerHeight: layout.headHeight(),
    domLayout: layout.isNarrow() ? 'autoHeight' : 'normal',
    // The event may arrive after a newer one: only the current focus counts.
    onCellFocused: ({ api }) => {
      const at = api.getFocusedCell();
      if (!at) return;
      const mark = { row: at.rowIndex, pinned: at.rowPinned === 'bottom', column: at.column.getColId() };
      parts.focused(cellOf(mark, model()));
    },
  };
}

/** What the mouse did to the columns, told once it is done. */
function columnEvents({ model, widened, ordered }: GridTableParts): GridOptions<GridRow> {
  const keyOf = (id: string) => model().columns.find(({ key }, index) => columnId(index, key) === id)?.key;
  return {
    onColumnResized: ({ finished, source, column }) => {
      const key = finished && column ? keyOf(column.getColId()) : undefined;
      const byHand = source === 'uiColumnResized' || source === 'autosizeColumns';
      if (key !== undefined && column && byHand) widened?.(key, column.getActualWidth());
    },
    onColumnMoved: ({ finished, source, api }) => {
      if (!finished || source !== 'uiColumnMoved') return;
      const keys = api.getAllDisplayedColumns().map((column) => keyOf(column.getColId()));
      ordered?.(keys.filter((key) => key !== undefined));
    },
  };
}

function columnDefs({ layout, model, draw }: GridTableParts): ColDef<GridRow>[] {
  return model().columns.map(({ key, title }, index) => ({
    ...layout.column(index, key),
    colId: columnId(index, key),
    headerName: title,
    ...(index === 0 && { cellAriaRole: 'rowheader', lockPosition: 'left' as const, suppressMovable: true }),
    cellRenderer: ({ data, eGridCell }: { readonly data?: GridRow; readonly eGridCell: HTMLElement }) =>
      data ? draw(eGridCell, { row: data.key, column: key }) : document.createElement('span'),
  }));
}

/** Rows that are not pinned. */
function lineCount({ rows, pinned }: GridModel<unknown>): number {
  return rows.length - pinned;
}

function linesOf(model: GridModel<unknown>): GridRow[] {
  return model.rows.slice(0, lineCount(model));
}

/** As the library counts: pinned rows have their own numbering. */
function indexOf(row: number, model: GridModel<unknown>): { readonly index: number; readonly pinned: boolean } {
  const lines = lineCount(model);
  return row < lines ? { index: row, pinned: false } : { index: row - lines, pinned: true };
}

function cellOf({ row, pinned, column }: CellMark, model: GridModel<unknown>): Cell {
  const at = model.columns.findIndex(({ key }, index) => columnId(index, key) === column);
  return { row: pinned ? lineCount(model) + row : row, column: Math.max(0, at) };
}

function columnWords({ columns }: GridModel<unknown>): string {
  return columns
    .map(({ key, title, widthRem = '', sorted = '', filtered = '' }) =>
      [key, title, widthRem, sorted, filtered].join('\t'),
    )
    .join('\n');
}

function rowWords({ rows }: GridModel<unknown>): string {
  return rows.map(({ key, looks }) => `${key}\t${looks.join(' ')}`).join('\n');
}

/** What stands before and behind everything else in the grid: nobody comes there by Tab, Tab goes on from there. */
function edgesOf(host: HTMLElement): { readonly first: HTMLElement; readonly last: HTMLElement } {
  const edge = () => {
    const made = document.createElement('span');
    made.tabIndex = -1;
    made.className = css['edge'] ?? '';
    return made;
  };
  const edges = { first: edge(), last: edge() };
  host.prepend(edges.first);
  host.append(edges.last);
  return edges;
}

/** Names the grid. Without a cell that could have the keyboard it takes it itself: its heads can be scrolled. */
function speakOfGrid({ host, label, model }: GridTableParts): () => void {
  const grid = host.querySelector('[role="grid"], [role="treegrid"]');
  grid?.setAttribute('aria-label', label);
  grid?.setAttribute('aria-multiselectable', 'true');
  const takeFocus = () => {
    if (model().rows.length === 0) grid?.setAttribute('tabindex', '0');
    else grid?.removeAttribute('tabindex');
  };
  takeFocus();
  return takeFocus;
}

/**
 * The library marks its viewport while it is focused. Our style does not use the mark, and each change would restyle
 * every cell.
 */
function keepFocusMark(host: HTMLElement): void {
  const mark = () => host.querySelector('.ag-grid-viewport')?.classList.add('ag-has-focus');
  mark();
  host.addEventListener('focusout', mark);
}
