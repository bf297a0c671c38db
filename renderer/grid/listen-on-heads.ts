import { below, type MenuPoint } from '#renderer/kit/context-menu.tsx';
import { columnId, type GridModel } from './grid-model.ts';
import { headMark } from './mouse-selection.ts';
import { single, type Selection } from './selection.ts';

/** What is done at the heads of columns. A head that holds fields has Enter to go into them. */
export interface HeadActs {
  /** A press, or Enter. */
  readonly press?: (column: string) => void;
  /** One place to the left or right, by key. */
  readonly move: (column: string, by: 1 | -1) => void;
  /** Drawn to this width, px; absent if columns keep theirs. */
  readonly width?: (column: string, px: number) => void;
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
  /** Takes the focus to the edge of the grid, from where Tab goes on; always true. */
  readonly leave: (back: boolean) => boolean;
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
      if (column !== undefined && isStill && !onEdge) grid.heads?.press?.(column);
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
  const { target } = event;
  const head = target instanceof HTMLElement ? headAround(target, grid) : undefined;
  if (!head || !(target instanceof HTMLElement)) return;
  const done = target === head.head ? runHeadKey(event, grid, head) : runCardKey(event, head.head, target);
  const isTabOut = event.key === 'Tab' && !done && grid.leave(event.shiftKey);
  if (done) event.preventDefault();
  if (done || isTabOut) event.stopPropagation();
}

function headAround(target: HTMLElement, grid: HeadReach): Head | undefined {
  const column = grid.heads && columnOf(target, grid);
  const head = target.closest<HTMLElement>('.ag-header-cell');
  return column === undefined || !head || target.closest('[popover]') ? undefined : { column, head };
}

/** In a field of a head: Tab goes on to the next, Escape back to the head. `false` leaves the key to the field. */
function runCardKey({ key, shiftKey }: KeyboardEvent, head: HTMLElement, field: HTMLElement): boolean {
  if (key === 'Tab') return goOnInHead(head, field, shiftKey);
  if (key === 'Escape') head.focus();
  return key === 'Escape';
}

/** The fields and buttons of a head, without those of its menu. */
function fieldsOf(head: HTMLElement): readonly HTMLElement[] {
  const all = [...head.querySelectorAll<HTMLElement>('select, input, button')];
  return all.filter((each) => !each.closest('[popover]') && !each.matches(':disabled'));
}

/** Within a head Tab goes from field to field, and back to the head itself; `false` where it leaves the grid. */
function goOnInHead(head: HTMLElement, from: HTMLElement, back: boolean): boolean {
  const fields = fieldsOf(head);
  const at = fields.indexOf(from) + (back ? -1 : 1);
  const next = at < 0 ? head : fields[at];
  next?.focus();
  return next !== undefined;
}

interface Head {
  readonly column: string;
  readonly head: HTMLElement;
}

/** Runs the action of a key at a head; `false` leaves the key to the page. */
function runHeadKey(press: KeyboardEvent, grid: HeadReach, { column, head }: Head): boolean {
  const menu = () => grid.columnMenu(headMark(head) ?? '', below(head));
  const goIn = () => {
    const [first] = fieldsOf(head);
    if (first) first.focus();
    else grid.heads?.press?.(column);
  };
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
    Enter: goIn,
    F2: goIn,
    ' ': goIn,
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
