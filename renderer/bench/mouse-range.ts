import { namesColumn } from './grid-columns.ts';
import type { Spot } from './range.ts';

/** A drawn cell by the grid's own marks: its row among the lines or the foot, its column. */
export interface CellMark {
  readonly row: number;
  readonly pinned: boolean;
  readonly column: string;
}

export interface MouseActs {
  readonly press: (spot: Spot, extend: boolean) => void;
  readonly draw: (spot: Spot) => void;
  readonly open: (spot: Spot) => void;
  readonly spotOf: (mark: CellMark) => Spot | undefined;
}

/**
 * Ranges drawn with the mouse. Native events, because the grid's own come after the button is up again.
 * The name column only takes presses, so that its buttons stay buttons.
 */
export function mouseRange(host: HTMLElement, acts: MouseActs): () => void {
  let drawing = false;
  const stop = new AbortController();
  const listen = (
    kind: 'mousedown' | 'mouseover' | 'dblclick',
    run: (spot: Spot, event: MouseEvent, mark: CellMark) => void,
  ) =>
    host.addEventListener(
      kind,
      (event) => {
        const mark = onButton(event.target) ? undefined : cellMark(event.target);
        const spot = mark && acts.spotOf(mark);
        if (mark && spot) run(spot, event, mark);
      },
      { signal: stop.signal },
    );
  listen('mousedown', (spot, event, mark) => {
    if (event.button !== 0) return;
    drawing = mark.column !== namesColumn;
    acts.press(spot, event.shiftKey);
  });
  listen('mouseover', (spot) => {
    if (drawing) acts.draw(spot);
  });
  listen('dblclick', (spot) => acts.open(spot));
  window.addEventListener('mouseup', () => (drawing = false), { signal: stop.signal });
  return () => stop.abort();
}

export function cellMark(target: EventTarget | null): CellMark | undefined {
  const cell = target instanceof Element ? target.closest('.ag-cell[col-id]') : null;
  const column = cell?.getAttribute('col-id');
  const index = cell?.closest('[row-index]')?.getAttribute('row-index');
  if (!column || !index) return undefined;
  const pinned = index.startsWith('b-');
  return { row: Number(pinned ? index.slice(2) : index), pinned, column };
}

function onButton(target: EventTarget | null): boolean {
  return target instanceof Element && target.closest('button, input, select') !== null;
}
