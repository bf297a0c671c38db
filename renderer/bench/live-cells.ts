import { afterFrame } from '#renderer/frame/after-frame.ts';
import { paintBox, paintFootBox, sameBox, sameFootBox, sameFootFrame, sameFrame } from './paint-box.ts';
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

interface Painted {
  readonly cell: HTMLElement;
  readonly shown: Shown;
}

type FoldActs = Pick<BenchActs, 'fold' | 'showAll'>;

export interface LiveCells {
  /** The inside of a cell the grid is about to draw; it is kept in step from then on. */
  readonly draw: (live: LiveCell) => HTMLElement;
  /** Repaints the drawn cells whose box is another one now. */
  readonly show: (view: BenchView) => void;
  /** Every drawn cell. */
  readonly each: (visit: (live: LiveCell) => void) => void;
}

/** Keeps the cells the grid has drawn in step with the view, touching only those that changed. */
export function liveCells(first: BenchView, acts: FoldActs): LiveCells {
  let view = first;
  let rows = rowsOf(first);
  const drawn = new Map<HTMLElement, LiveCell & { shown: Shown }>();
  const say = sayLater((cell) => spokenOf(drawn.get(cell)?.shown));

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
      const stand = new Set<string | undefined>(next.columns.map((column) => column.key)).add(undefined);
      each((live) => {
        const row = rows.get(rowKey(live.row));
        if (!row || !stand.has(live.column)) return;
        const shown = shownAt(next, row, live.column);
        if (alike(live.shown, shown)) return;
        const now = { ...live, row, shown };
        drawn.set(live.cell, now);
        repaint(live.shown, now, { acts, say });
      });
    },
    each,
  };
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

interface Means {
  readonly acts: FoldActs;
  readonly say: (cell: HTMLElement) => void;
}

/** Where only the figure is another one, only that is written. */
function repaint(before: Shown, { cell, shown }: Painted, { acts, say }: Means): void {
  if (shown.kind === 'name' || !shown.box || !onlyFigureDiffers(before, shown)) {
    cell.replaceChildren(insideOf(shown, acts));
    return;
  }
  writeIn(cell, '.fig', shown.box.figure);
  say(cell);
}

/** What readers hear follows the figures a frame later; the box that has the keyboard is just being read, and is not kept waiting. */
function sayLater(spoken: (cell: HTMLElement) => string): (cell: HTMLElement) => void {
  const behind = new Set<HTMLElement>();
  const say = (cell: HTMLElement) => writeIn(cell, '.unseen', spoken(cell));
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

function spokenOf(shown: Shown | undefined): string {
  return shown && shown.kind !== 'name' ? (shown.box?.spoken ?? '') : '';
}

function onlyFigureDiffers(a: Shown, b: Shown): boolean {
  if (a.kind === 'box' && b.kind === 'box')
    return a.box !== undefined && b.box !== undefined && sameFrame(a.box, b.box);
  return a.kind === 'foot' && b.kind === 'foot' && sameFootFrame(a.box, b.box);
}

function writeIn(cell: HTMLElement, part: string, words: string): void {
  const text = cell.querySelector(part)?.firstChild;
  if (text instanceof Text) text.data = words;
}

function insideOf(shown: Shown, acts: FoldActs): HTMLElement {
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
