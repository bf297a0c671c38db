import { below, type MenuPoint } from '#renderer/kit/context-menu.tsx';
import { columnId, type GridModel } from './grid-model.ts';
import { headMark } from './mouse-selection.ts';
import { single, type Selection } from './selection.ts';

/** What is done at the heads of columns. */
export interface HeadActs {
  /** A press, or Enter. */
  readonly press: (column: string) => void;
  /** One place to the left or right, by key. */
  readonly move: (column: string, by: 1 | -1) => void;
  /** Drawn to this width, px. */
  readonly width: (column: string, px: number) => void;
}

/** What the heads need of a grid. */
export interface HeadReach {
  readonly heads: HeadActs | undefined;
  /** The key of a column by the library's id, and its position by its key. */
  readonly columnKey: (id: string) => string | undefined;
  readonly columnAt: (key: string) => number;
  /** Focuses the head of a column; `false` if nothing can be done there. */
  readonly focusHead: (column: number) => boolean;
  /** Opens the acts of a column at its head; `false` if there are none. */
  readonly columnMenu: (id: string, at: MenuPoint) => boolean;
  readonly take: (selection: Selection) => void;
}

/** A press that goes further, px, draws the column and does not press its head. */
const STILL = 4;

/** Connects the heads of columns to mouse and keys; returns a function that disconnects them. */
export function listenOnHeads(host: HTMLElement, grid: HeadReach): () => void {
  const stop = new AbortController();
  const { signal } = stop;
  let pressedAt = { x: 0, y: 0 };
  host.addEventListener('mousedown', ({ clientX: x, clientY: y }) => (pressedAt = { x, y }), { signal });
  host.addEventListener(
    'click',
    (event) => {
      const column = columnOf(event.target, grid);
      const isStill = Math.hypot(event.clientX - pressedAt.x, event.clientY - pressedAt.y) <= STILL;
      const onEdge = event.target instanceof Element && event.target.closest('.ag-header-cell-resize') !== null;
      if (column !== undefined && isStill && !onEdge) grid.heads?.press(column);
    },
    { signal },
  );
  host.addEventListener('keydown', (event) => pressHead(event, grid), { capture: true, signal });
  return () => stop.abort();
}

/** Focuses the head of a column, if it is drawn. */
export function focusHead(host: HTMLElement, { columns }: GridModel<unknown>, column: number): boolean {
  const id = columnId(column, columns[column]?.key ?? '');
  const head = host.querySelector<HTMLElement>(`.ag-header-cell[col-id="${CSS.escape(id)}"]`);
  if (!head) return false;
  head.tabIndex = -1;
  head.focus();
  return document.activeElement === head;
}

function pressHead(event: KeyboardEvent, grid: HeadReach): void {
  const column = grid.heads && columnOf(event.target, grid);
  if (column === undefined || !(event.target instanceof HTMLElement)) return;
  if (!runHeadKey(event, grid, { column, head: event.target })) return;
  event.preventDefault();
  event.stopPropagation();
}

interface Head {
  readonly column: string;
  readonly head: HTMLElement;
}

/** Runs the action of a key at a head; `false` leaves the key to the page. */
function runHeadKey(press: KeyboardEvent, grid: HeadReach, { column, head }: Head): boolean {
  const menu = () => grid.columnMenu(headMark(head) ?? '', below(head));
  const toCells = () => grid.take(single({ row: 0, column: grid.columnAt(column) }));
  const sideways = (by: 1 | -1) => {
    if (press.altKey && press.shiftKey) grid.heads?.move(column, by);
    else grid.focusHead(grid.columnAt(column) + by);
  };
  const keys: Readonly<Record<string, () => unknown>> = {
    ArrowLeft: () => sideways(-1),
    ArrowRight: () => sideways(1),
    ArrowDown: toCells,
    Escape: toCells,
    Enter: () => grid.heads?.press(column),
    ' ': () => grid.heads?.press(column),
    ContextMenu: menu,
    ...(press.shiftKey && { F10: menu }),
  };
  const run = keys[press.key];
  run?.();
  return run !== undefined;
}

/** The key of the column whose head this is in. */
function columnOf(target: EventTarget | null, grid: HeadReach): string | undefined {
  const id = headMark(target);
  return id === undefined ? undefined : grid.columnKey(id);
}
