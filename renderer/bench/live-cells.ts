import { paintBox, paintFootBox, sameBox, sameFootBox } from './paint-box.ts';
import { makeElement } from './make-element.ts';
import { paintName, sameName } from './paint-name.ts';
import type { BenchActs } from './bench-acts.ts';
import { rowKey } from './bench-positions.ts';
import type { BenchRow, BenchView, BoxView, FootBox } from './view-model.ts';

/** A drawn cell of the grid and what it shows now. */
export interface LiveCell {
  readonly cell: HTMLElement;
  readonly row: BenchRow;
  /** `undefined` for the names. */
  readonly column: string | undefined;
}

type Shown =
  | { readonly kind: 'name'; readonly row: BenchRow }
  | { readonly kind: 'box'; readonly box: BoxView | undefined }
  | { readonly kind: 'foot'; readonly box: FootBox };

export interface LiveCells {
  /** The inside of a cell the grid is about to draw; it is kept in step from then on. */
  readonly draw: (live: LiveCell) => HTMLElement;
  /** Repaints the drawn cells whose box is another one now. */
  readonly show: (view: BenchView) => void;
  /** Every drawn cell. */
  readonly each: (visit: (live: LiveCell) => void) => void;
}

/** Keeps the cells the grid has drawn in step with the view, touching only those that changed. */
export function liveCells(first: BenchView, acts: Pick<BenchActs, 'fold' | 'showAll'>): LiveCells {
  let view = first;
  let rows = rowsOf(first);
  const drawn = new Map<HTMLElement, LiveCell & { shown: Shown }>();

  const each = (visit: (live: LiveCell & { shown: Shown }) => void) => {
    for (const [cell, live] of drawn) {
      if (cell.isConnected) visit(live);
      else drawn.delete(cell);
    }
  };
  return {
    draw: (given) => {
      const row = rows.get(rowKey(given.row)) ?? given.row;
      const live = { ...given, row, shown: shownAt(view, row, given.column) };
      drawn.set(given.cell, live);
      return insideOf(live.shown, acts);
    },
    show: (next) => {
      view = next;
      rows = rowsOf(next);
      each((live) => {
        const row = rows.get(rowKey(live.row));
        if (!row || !stands(next, live.column)) return;
        const shown = shownAt(next, row, live.column);
        if (alike(live.shown, shown)) return;
        const now = { ...live, row, shown };
        drawn.set(live.cell, now);
        live.cell.replaceChildren(insideOf(shown, acts));
      });
    },
    each,
  };
}

function stands(view: BenchView, column: string | undefined): boolean {
  return column === undefined || view.columns.some((each) => each.key === column);
}

function rowsOf(view: BenchView): ReadonlyMap<string, BenchRow> {
  return new Map([...view.rows, ...view.foot].map((row) => [rowKey(row), row]));
}

function shownAt(view: BenchView, row: BenchRow, column: string | undefined): Shown {
  if (column === undefined) return { kind: 'name', row };
  if (row.kind === 'foot') return { kind: 'foot', box: view.footOf(row.id, column) };
  return { kind: 'box', box: view.boxOf(row.id, column) };
}

function alike(a: Shown, b: Shown): boolean {
  if (a.kind === 'name' && b.kind === 'name') return sameName(a.row, b.row);
  if (a.kind === 'box' && b.kind === 'box') return sameBox(a.box, b.box);
  return a.kind === 'foot' && b.kind === 'foot' && sameFootBox(a.box, b.box);
}

function insideOf(shown: Shown, acts: Pick<BenchActs, 'fold' | 'showAll'>): HTMLElement {
  switch (shown.kind) {
    case 'name':
      return paintName(shown.row, acts);
    case 'foot':
      return spokenAs(paintFootBox(shown.box), shown.box.spoken);
    case 'box':
      return shown.box ? spokenAs(paintBox(shown.box), shown.box.spoken) : makeElement('span', 'unseen', 'empty');
  }
}

/** Readers hear one sentence in place of what is painted. */
function spokenAs(painted: HTMLElement, spoken: string): HTMLElement {
  painted.setAttribute('aria-hidden', 'true');
  const both = makeElement('span', 'spoken');
  both.append(painted, makeElement('span', 'unseen', spoken));
  return both;
}
