import { headColumn } from './grid-model.ts';
import type { Cell } from './selection.ts';

/** A drawn cell by the grid's attributes: its row, whether that is pinned, its column. */
export interface CellMark {
  readonly row: number;
  readonly pinned: boolean;
  readonly column: string;
}

export interface MouseActs {
  /** `extend`: the range goes on to here; `add`: another range begins here. */
  readonly press: (cell: Cell, how: 'alone' | 'extend' | 'add') => void;
  readonly draw: (cell: Cell) => void;
  readonly open: (cell: Cell) => void;
  readonly cellOf: (mark: CellMark) => Cell | undefined;
}

/**
 * Selects with the mouse. Uses native events, because the grid's own fire only after the button is released.
 * The column of row heads handles only presses, so that its buttons work.
 */
export function mouseSelection(host: HTMLElement, acts: MouseActs): () => void {
  let drawing = false;
  const stop = new AbortController();
  const listen = (
    kind: 'mousedown' | 'mouseover' | 'dblclick',
    run: (cell: Cell, event: MouseEvent, mark: CellMark) => void,
  ) =>
    host.addEventListener(
      kind,
      (event) => {
        const mark = onButton(event.target) ? undefined : cellMark(event.target);
        const cell = mark && acts.cellOf(mark);
        if (mark && cell) run(cell, event, mark);
      },
      { signal: stop.signal },
    );
  listen('mousedown', (cell, event, mark) => {
    if (event.button !== 0) return;
    drawing = mark.column !== headColumn;
    acts.press(cell, howPressed(event));
  });
  listen('mouseover', (cell) => {
    if (drawing) acts.draw(cell);
  });
  listen('dblclick', (cell) => acts.open(cell));
  window.addEventListener('mouseup', () => (drawing = false), { signal: stop.signal });
  return () => stop.abort();
}

function howPressed({ shiftKey, ctrlKey, metaKey }: MouseEvent): 'alone' | 'extend' | 'add' {
  if (shiftKey) return 'extend';
  return ctrlKey || metaKey ? 'add' : 'alone';
}

export function cellMark(target: EventTarget | null): CellMark | undefined {
  const cell = target instanceof Element ? target.closest('.ag-cell[col-id]') : null;
  const column = cell?.getAttribute('col-id');
  const index = cell?.closest('[row-index]')?.getAttribute('row-index');
  if (!column || !index) return undefined;
  const pinned = index.startsWith('b-');
  return { row: Number(pinned ? index.slice(2) : index), pinned, column };
}

/** The library's id of the column whose head this is in. */
export function headMark(target: EventTarget | null): string | undefined {
  const head = target instanceof Element ? target.closest('.ag-header-cell[col-id]') : null;
  return head?.getAttribute('col-id') ?? undefined;
}

function onButton(target: EventTarget | null): boolean {
  return target instanceof Element && target.closest('button, input, select') !== null;
}
