import { afterFrame } from '#renderer/frame/after-frame.ts';
import type { CellKey } from './grid-model.ts';
import { writePart } from './make-element.ts';

/** How to paint a cell from its content. */
export interface CellPaint<Shown> {
  readonly paint: (shown: Shown) => HTMLElement;
  /** Whether both would look and read the same. */
  readonly same: (one: Shown, other: Shown) => boolean;
  /** The figure, if nothing else has changed; `undefined` repaints the whole cell. */
  readonly onlyFigure: (before: Shown, now: Shown) => string | undefined;
  readonly spoken: (shown: Shown) => string;
  /** It can only be read. */
  readonly closed: (shown: Shown) => boolean;
}

export interface LiveCells<Shown> {
  /** The content of a cell the grid is about to draw; it is updated from then on. */
  readonly draw: (cell: HTMLElement, at: CellKey) => HTMLElement;
  /** Repaints the drawn cells whose content changed. Cells without content are about to be removed. */
  readonly show: (shownAt: (at: CellKey) => Shown | undefined) => void;
  /** Every drawn cell. */
  readonly each: (visit: (cell: HTMLElement, at: CellKey) => void) => void;
}

interface Live<Shown> {
  readonly at: CellKey;
  readonly shown: Shown;
}

/** Updates the cells the grid has drawn, touching only what changed. */
export function liveCells<Shown>(paint: CellPaint<Shown>, shownAt: (at: CellKey) => Shown): LiveCells<Shown> {
  const drawn = new Map<HTMLElement, Live<Shown>>();
  const say = sayLater((cell) => {
    const live = drawn.get(cell);
    return live ? paint.spoken(live.shown) : '';
  });
  const each = (visit: (cell: HTMLElement, live: Live<Shown>) => void) => {
    for (const [cell, live] of drawn) {
      if (cell.isConnected) visit(cell, live);
      else drawn.delete(cell);
    }
  };
  return {
    draw: (cell, at) => {
      const shown = shownAt(at);
      drawn.set(cell, { at, shown });
      markClosed(cell, paint.closed(shown));
      return paint.paint(shown);
    },
    show: (next) =>
      each((cell, live) => {
        const shown = next(live.at);
        if (shown === undefined || paint.same(live.shown, shown)) return;
        drawn.set(cell, { at: live.at, shown });
        const figure = paint.onlyFigure(live.shown, shown);
        if (figure === undefined) {
          cell.replaceChildren(paint.paint(shown));
          markClosed(cell, paint.closed(shown));
        } else {
          writePart(cell, 'figure', figure);
          say(cell);
        }
      }),
    each: (visit) => each((cell, { at }) => visit(cell, at)),
  };
}

function markClosed(cell: HTMLElement, closed: boolean): void {
  if ((cell.ariaReadOnly === 'true') !== closed) cell.ariaReadOnly = closed ? 'true' : null;
}

/** Screen reader text follows the figures a frame later. The focused cell is being read, so it is updated at once. */
function sayLater(spoken: (cell: HTMLElement) => string): (cell: HTMLElement) => void {
  const behind = new Set<HTMLElement>();
  const say = (cell: HTMLElement) => writePart(cell, 'spoken', spoken(cell));
  const catchUp = () => {
    for (const cell of behind) say(cell);
    behind.clear();
  };
  return (cell) => {
    if (cell === document.activeElement) {
      say(cell);
      return;
    }
    if (behind.size === 0) afterFrame(catchUp);
    behind.add(cell);
  };
}
