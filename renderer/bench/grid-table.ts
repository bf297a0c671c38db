import {
  CellStyleModule,
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
import type { GridApi, GridOptions } from 'ag-grid-community';

ModuleRegistry.registerModules([
  ClientSideRowModelApiModule,
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

/** Bare paper: every line and edge is drawn by our own style. */
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

/** A grid table of ours in a host: no sorting, moving, resizing or editing of its own, nothing that moves by itself. */
export function gridTable<Row>(
  host: HTMLElement,
  label: string,
  nonce: string | undefined,
  options: GridOptions<Row>,
): GridApi<Row> {
  const api = createGrid<Row>(host, {
    theme,
    ...(nonce === undefined ? {} : { styleNonce: nonce }),
    animateRows: false,
    // Rows that are moved by `transform` are each a layer of their own to paint.
    suppressRowTransform: true,
    suppressRowHoverHighlight: true,
    suppressMovableColumns: true,
    suppressDragLeaveHidesColumns: true,
    suppressNoRowsOverlay: true,
    suppressScrollOnNewData: true,
    suppressTouch: true,
    ensureDomOrder: true,
    ...options,
    defaultColDef: {
      sortable: false,
      resizable: false,
      suppressMovable: true,
      lockPosition: true,
      ...options.defaultColDef,
    },
  });
  host.querySelector('[role="grid"], [role="treegrid"]')?.setAttribute('aria-label', label);
  keepFocusMark(host);
  return api;
}

/** The grid marks its viewport while it has the keyboard; no look of ours needs it, and each change would cost every box. */
function keepFocusMark(host: HTMLElement): void {
  const mark = () => host.querySelector('.ag-grid-viewport')?.classList.add('ag-has-focus');
  mark();
  host.addEventListener('focusout', mark);
}
