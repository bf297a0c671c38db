import type { CellEditor } from './cell-editor.tsx';
import type { GridIndex } from './grid-model.ts';
import type { GridTable } from './grid-table.ts';
import { keyAct, type KeyAct } from './grid-keys.ts';
import { cellMark, mouseSelection } from './mouse-selection.ts';
import { atEdge, rectOf, single, stepped, tabbed, type Cell, type Rect, type Selection } from './selection.ts';

/** What keys do with rows. */
export interface RowActs {
  /** Enter on a row that is not a line; returns whether it did anything. */
  readonly openRow?: (row: string, all: boolean) => boolean;
  /** Absent if keys do not add and remove rows. */
  readonly add?: () => void;
  readonly remove?: () => void;
}

/** What keys, mouse and clipboard need of a grid. */
export interface GridReach {
  readonly table: GridTable;
  readonly editor: CellEditor;
  readonly acts: RowActs;
  readonly index: () => GridIndex;
  readonly selection: () => Selection | undefined;
  /** Selects; focuses the tip unless the grid already did. */
  readonly take: (selection: Selection, focus?: boolean) => void;
  /** Opens a cell for editing; `typed` replaces its text. */
  readonly open: (cell: Cell, typed?: string) => void;
  readonly copied: (rect: Rect) => string;
  readonly paste: (rect: Rect, text: string) => void;
  /** Returns `false` if this grid is not filled in that direction. */
  readonly fill: (rect: Rect, to: 'right' | 'down') => boolean;
  readonly clear: (rect: Rect) => void;
  /** Marks every drawn cell again, for cells that the grid has just drawn. */
  readonly remark: () => void;
}

/** Connects keys, mouse and clipboard to a grid; returns a function that disconnects them. */
export function listenOnGrid(host: HTMLElement, grid: GridReach): () => void {
  const { table, editor, selection } = grid;
  const stop = new AbortController();
  const { signal } = stop;
  host.addEventListener('keydown', (event) => pressKey(event, grid), { capture: true, signal });
  host.addEventListener('focusin', (event) => enterByRow(event, grid), { signal });
  const pointed = pointOnGrid(host, grid);
  const clipped = clipboardEvents(host, {
    copied: () => {
      const chosen = selection();
      return chosen && grid.copied(rectOf(chosen));
    },
    clear: () => {
      const chosen = selection();
      if (chosen) grid.clear(rectOf(chosen));
    },
    paste: (text) => {
      const chosen = selection();
      if (chosen) grid.paste(rectOf(chosen), text);
    },
  });
  table.scrolled(() => {
    editor.follow();
    grid.remark();
  });
  return () => {
    stop.abort();
    pointed();
    clipped();
  };
}

/** Tab into the grid focuses a whole row first: this moves the focus to the selected cell. */
function enterByRow({ target }: FocusEvent, { selection, take, index }: GridReach): void {
  if (!(target instanceof Element) || !target.classList.contains('ag-row')) return;
  take(single(selection()?.tip ?? { row: 0, column: Math.min(1, index().extent.columns - 1) }));
}

function pointOnGrid(host: HTMLElement, { selection, take, open, table }: GridReach): () => void {
  return mouseSelection(host, {
    press: (cell, extend) => {
      const begun = extend ? selection() : undefined;
      take(begun ? { anchor: begun.anchor, tip: cell } : single(cell), begun !== undefined);
    },
    draw: (cell) => take({ anchor: selection()?.anchor ?? cell, tip: cell }),
    open: (cell) => open(cell),
    cellOf: table.cellOf,
  });
}

/** The first key in a newly focused cell selects it: the grid reports the focus only later. */
function pressKey(event: KeyboardEvent, grid: GridReach): void {
  const mark = inField(event.target) ? undefined : cellMark(event.target);
  if (!mark) return;
  if (!grid.selection()) grid.take(single(grid.table.cellOf(mark)), false);
  const selection = grid.selection();
  const act = keyAct(event);
  if (!selection || !act || !runKey(act, grid, selection)) return;
  event.preventDefault();
  event.stopPropagation();
}

/** Runs the action of a key; `false` leaves the key to the page. */
function runKey(act: KeyAct, grid: GridReach, selection: Selection): boolean {
  const { extent } = grid.index();
  const { tip } = selection;
  switch (act.act) {
    case 'move':
      return walk(grid, selection, { to: stepped(extent, tip, act.to, act.jump), extend: act.extend });
    case 'edge':
      return walk(grid, selection, { to: atEdge(extent, tip, act.to), extend: act.extend });
    case 'next':
      return walk(grid, selection, { to: tabbed(extent, tip, act.back), extend: false });
    case 'all':
      return walk(grid, { anchor: { row: 0, column: 1 }, tip }, { to: atEdge(extent, tip, 'last'), extend: true });
    case 'back to one':
      return walk(grid, selection, { to: tip, extend: false });
    default:
      return writeByKey(act, grid, selection);
  }
}

interface Walk {
  readonly to: Cell | undefined;
  readonly extend: boolean;
}

function walk({ take }: GridReach, { anchor }: Selection, { to, extend }: Walk): boolean {
  if (to) take(extend ? { anchor, tip: to } : single(to));
  return to !== undefined;
}

type Writing = Exclude<KeyAct, { readonly act: 'move' | 'edge' | 'next' }>;

function writeByKey(act: Writing, grid: GridReach, selection: Selection): boolean {
  const rect = rectOf(selection);
  switch (act.act) {
    case 'write':
      grid.open(selection.tip, act.typed);
      return true;
    case 'open':
      return openByKey(grid, selection.tip, act.all);
    case 'clear':
      grid.clear(rect);
      return true;
    case 'fill right':
      return grid.fill(rect, 'right');
    case 'fill down':
      return grid.fill(rect, 'down');
    case 'add':
    case 'remove':
      grid.acts[act.act]?.();
      return grid.acts[act.act] !== undefined;
    default:
      return false;
  }
}

/** Enter opens a row that can be opened, or the cell. */
function openByKey({ acts, index, open }: GridReach, tip: Cell, all: boolean): boolean {
  const key = index().keyOf(tip);
  if (!key || !acts.openRow?.(key.row, all)) open(tip);
  return true;
}

interface ClipboardActs {
  /** Tab-separated text of the range, or `undefined` if nothing is selected. */
  readonly copied: () => string | undefined;
  readonly clear: () => void;
  readonly paste: (text: string) => void;
}

/**
 * Copy, cut and paste through the page's own events, which need no permission. A field being edited handles its own.
 */
function clipboardEvents(host: HTMLElement, acts: ClipboardActs): () => void {
  const stop = new AbortController();
  const copy = (event: ClipboardEvent, after?: () => void) => {
    const text = inField(event.target) ? undefined : acts.copied();
    if (text === undefined || !event.clipboardData) return;
    event.clipboardData.setData('text/plain', text);
    event.preventDefault();
    after?.();
  };
  host.addEventListener('copy', (event) => copy(event), { signal: stop.signal });
  host.addEventListener('cut', (event) => copy(event, acts.clear), { signal: stop.signal });
  host.addEventListener(
    'paste',
    (event) => {
      const text = inField(event.target) ? '' : (event.clipboardData?.getData('text/plain') ?? '');
      if (text === '') return;
      event.preventDefault();
      acts.paste(text);
    },
    { signal: stop.signal },
  );
  return () => stop.abort();
}

function inField(target: EventTarget | null): boolean {
  return target instanceof Element && target.closest('input, textarea, select') !== null;
}
