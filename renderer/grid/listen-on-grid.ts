import type { CellEditor } from './cell-editor.tsx';
import type { MenuPoint } from '#renderer/kit/context-menu.tsx';
import { openCalendar } from '#renderer/kit/day-picker.tsx';
import { readClip, type Clip } from './clip.ts';
import type { GridIndex } from './grid-model.ts';
import type { GridTable } from './grid-table.ts';
import { listenOnHeads, type HeadReach } from './listen-on-heads.ts';
import { keyAct, type KeyAct } from './grid-keys.ts';
import { cellMark, headMark, mouseSelection } from './mouse-selection.ts';
import {
  addedTo,
  atEdge,
  beginAnother,
  edgesOf,
  rangesOf,
  single,
  stepped,
  tipAt,
  whole,
  type Cell,
  type Rect,
  type Selection,
} from './selection.ts';

/** What keys do with rows. */
export interface RowActs {
  /** Enter on a row that is not a line; returns whether it did anything. */
  readonly openRow?: (row: string, all: boolean) => boolean;
  /** Absent if keys do not add and remove rows. */
  readonly add?: () => void;
  readonly remove?: () => void;
}

/** What keys, mouse and clipboard need of a grid. */
export interface GridReach extends HeadReach {
  readonly table: GridTable;
  readonly editor: CellEditor;
  readonly acts: RowActs;
  readonly index: () => GridIndex;
  readonly selection: () => Selection | undefined;
  /** Selects; focuses the tip unless the grid already did. */
  readonly take: (selection: Selection, focus?: boolean) => void;
  /** Opens a cell for editing; `typed` replaces its text. */
  readonly open: (cell: Cell, typed?: string) => void;
  /** `undefined` if the ranges cannot be copied as one block, which is said. */
  readonly copied: (ranges: readonly Rect[], withNames: boolean) => Clip | undefined;
  readonly paste: (ranges: readonly Rect[], block: readonly (readonly string[])[]) => void;
  /** Returns `false` if this grid is not filled in that direction. */
  readonly fill: (ranges: readonly Rect[], to: 'right' | 'down') => boolean;
  readonly clear: (ranges: readonly Rect[]) => void;
  /** Puts a copy on the clipboard without the browser's own copying. */
  readonly copy: (withNames: boolean) => void;
  /** Opens the acts of the selected cell, beside it or where the mouse is; `false` if there are none. */
  readonly menu: (at?: MenuPoint) => boolean;
  /** Marks every drawn cell again, for cells that the grid has just drawn. */
  readonly remark: () => void;
}

/** Connects keys, mouse and clipboard to a grid; returns a function that disconnects them. */
export function listenOnGrid(host: HTMLElement, grid: GridReach): () => void {
  const { table, editor, selection } = grid;
  const stop = new AbortController();
  const { signal } = stop;
  host.addEventListener('keydown', (event) => pressKey(event, grid), { capture: true, signal });
  const headed = listenOnHeads(host, grid);
  host.addEventListener('contextmenu', (event) => openMenuAt(event, grid), { signal });
  host.addEventListener('focusin', (event) => enter(event, grid), { signal });
  const pointed = pointOnGrid(host, grid);
  const clipped = clipboardEvents(host, {
    copied: () => {
      const chosen = selection();
      return chosen && grid.copied(rangesOf(chosen), false);
    },
    clear: () => {
      const chosen = selection();
      if (chosen) grid.clear(rangesOf(chosen));
    },
    paste: (block) => {
      const chosen = selection();
      if (chosen) grid.paste(rangesOf(chosen), block);
    },
  });
  table.scrolled(() => {
    editor.follow();
    grid.remark();
  });
  return () => {
    stop.abort();
    pointed();
    headed();
    clipped();
  };
}

/** F6 focuses a cell: without a selection it becomes that, so that the keyboard is seen. */
function enter({ target }: FocusEvent, { selection, take, table }: GridReach): void {
  if (!(target instanceof Element)) return;
  const mark = target.classList.contains('ag-cell') && !selection() ? cellMark(target) : undefined;
  if (mark) take(single(table.cellOf(mark)), false);
}

/** The right button chooses the cell under it, unless it is chosen, and opens its acts; a field keeps its own menu. */
function openMenuAt(event: MouseEvent, grid: GridReach): void {
  if (inField(event.target)) return;
  const at = { x: event.clientX, y: event.clientY };
  const mark = cellMark(event.target);
  const column = mark ? undefined : headMark(event.target);
  const opened = mark
    ? openCellMenu(grid, grid.table.cellOf(mark), at)
    : column !== undefined && grid.columnMenu(column, at);
  if (opened) event.preventDefault();
}

function openCellMenu(grid: GridReach, cell: Cell, at: MenuPoint): boolean {
  const selection = grid.selection();
  if (!selection || !edgesOf(rangesOf(selection), cell)) grid.take(single(cell));
  return grid.menu(at);
}

function pointOnGrid(host: HTMLElement, { selection, take, open, table }: GridReach): () => void {
  return mouseSelection(host, {
    press: (cell, how) => {
      const begun = how === 'alone' ? undefined : selection();
      if (!begun) take(single(cell), false);
      else take(how === 'add' ? addedTo(begun, cell) : { ...begun, tip: cell });
    },
    draw: (cell) => take({ ...(selection() ?? single(cell)), tip: cell }),
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
  // Where Tab goes to is found by the browser, from the edge that has the focus now.
  if (act.act !== 'leave') event.preventDefault();
  event.stopPropagation();
}

/** Runs the action of a key; `false` leaves the key to the page. */
function runKey(act: KeyAct, grid: GridReach, selection: Selection): boolean {
  const { extent } = grid.index();
  const { tip } = selection;
  switch (act.act) {
    case 'move':
      return move(act, grid, selection);
    case 'edge':
      return walk(grid, selection, { to: atEdge(extent, tip, act.to), extend: act.extend });
    case 'leave':
      return grid.leave(act.back);
    case 'add range':
      grid.take(beginAnother(selection));
      return true;
    case 'all':
      return walk(grid, { anchor: { row: 0, column: 1 }, tip }, { to: atEdge(extent, tip, 'last'), extend: true });
    case 'whole rows':
    case 'whole columns':
      grid.take(whole(extent, selection, act.act === 'whole rows' ? 'rows' : 'columns'));
      return true;
    case 'back to one':
      grid.take(single(tip));
      return true;
    default:
      return writeByKey(act, grid, selection);
  }
}

type Move = Extract<KeyAct, { readonly act: 'move' }>;

/** From the first row the way up leads to the head of the column, if anything can be done there. */
function move({ to, jump, extend }: Move, grid: GridReach, selection: Selection): boolean {
  const { tip } = selection;
  if (to === 'up' && !jump && !extend && tip.row === 0 && grid.focusHead(tip.column)) return true;
  return walk(grid, selection, { to: stepped(grid.index().extent, tip, to, jump), extend });
}

interface Walk {
  readonly to: Cell | undefined;
  readonly extend: boolean;
}

function walk({ take }: GridReach, selection: Selection, { to, extend }: Walk): boolean {
  if (to) take(tipAt(selection, to, extend));
  return to !== undefined;
}

type Writing = Exclude<KeyAct, { readonly act: 'move' | 'edge' | 'leave' }>;

function writeByKey(act: Writing, grid: GridReach, selection: Selection): boolean {
  switch (act.act) {
    case 'write':
      grid.open(selection.tip, act.typed);
      return true;
    case 'pick':
      grid.open(selection.tip);
      openCalendar(document.activeElement);
      return true;
    case 'open':
      return openByKey(grid, selection.tip, act.all);
    case 'menu':
      return grid.menu();
    case 'add':
    case 'remove':
      grid.acts[act.act]?.();
      return grid.acts[act.act] !== undefined;
    default:
      return rangesByKey(act, grid, rangesOf(selection));
  }
}

function rangesByKey({ act }: Writing, grid: GridReach, ranges: readonly Rect[]): boolean {
  switch (act) {
    case 'clear':
      grid.clear(ranges);
      return true;
    case 'same right':
      return grid.fill(ranges, 'right');
    case 'same below':
      return grid.fill(ranges, 'down');
    case 'copy with names':
      grid.copy(true);
      return true;
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
  /** The selected cells, or `undefined` if there is nothing to copy. */
  readonly copied: () => Clip | undefined;
  readonly clear: () => void;
  readonly paste: (block: readonly (readonly string[])[]) => void;
}

/**
 * Copy, cut and paste through the page's own events, which need no permission. A field being edited handles its own.
 */
function clipboardEvents(host: HTMLElement, acts: ClipboardActs): () => void {
  const stop = new AbortController();
  const copy = (event: ClipboardEvent, after?: () => void) => {
    const clip = inField(event.target) ? undefined : acts.copied();
    if (!clip || !event.clipboardData) return;
    event.clipboardData.setData('text/plain', clip.text);
    event.clipboardData.setData('text/html', clip.html);
    event.preventDefault();
    after?.();
  };
  host.addEventListener('copy', (event) => copy(event), { signal: stop.signal });
  host.addEventListener('cut', (event) => copy(event, acts.clear), { signal: stop.signal });
  host.addEventListener(
    'paste',
    (event) => {
      const data = inField(event.target) ? null : event.clipboardData;
      const block = data && readClip({ text: data.getData('text/plain'), html: data.getData('text/html') });
      if (!block) return;
      event.preventDefault();
      acts.paste(block);
    },
    { signal: stop.signal },
  );
  return () => stop.abort();
}

function inField(target: EventTarget | null): boolean {
  return target instanceof Element && target.closest('input, textarea, select') !== null;
}
