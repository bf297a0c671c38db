import type { BenchMetrics } from './bench-metrics.ts';
import { signal } from '@preact/signals';
import type { Signal } from '@preact/signals';
import { afterFrame } from '#renderer/frame/after-frame.ts';
import type { BenchActs } from './bench-acts.ts';
import { positionsOf } from './bench-positions.ts';
import { benchTable } from './bench-table.ts';
import type { BenchTable } from './bench-table.ts';
import type { Desk } from './bench-writing.ts';
import { boxEditor } from './box-editor.tsx';
import type { BoxEditor } from './box-editor.tsx';
import { followRoom } from './follow-room.ts';
import type { FollowedRoom } from './follow-room.ts';
import { liveCells } from './live-cells.ts';
import type { LiveCell, LiveCells } from './live-cells.ts';
import { cellMark } from './mouse-range.ts';
import { openBox } from './open-box.ts';
import { paintRange } from './range-paint.ts';
import { namesOf, rangeOf } from './range-names.ts';
import { kept, single } from './range.ts';
import type { Range, Spot } from './range.ts';
import type { BenchView } from './view-model.ts';

export interface BenchGridParts {
  readonly host: HTMLElement;
  readonly view: BenchView;
  readonly acts: BenchActs;
  readonly nonce: string | undefined;
  /** Told when the room has changed, and once at the start. */
  readonly measured: (metrics: BenchMetrics) => void;
}

/** The bench as keys, mouse and clipboard get hold of it. */
export interface BenchHand {
  readonly desk: () => Desk;
  readonly range: () => Range | undefined;
  readonly table: BenchTable;
  readonly editor: BoxEditor;
  /** Chooses a range; its tip gets the keyboard unless the grid gave it already. */
  readonly take: (range: Range, focus?: boolean) => void;
  /** Chooses a box and brings it into sight; the keyboard stays where it is. */
  readonly bring: (spot: Spot) => void;
  readonly write: (spot: Spot, typed?: string) => void;
  readonly show: (view: BenchView) => void;
  /** Marks every drawn cell anew, for those the grid has just drawn. */
  readonly remark: () => void;
  readonly destroy: () => void;
}

/** What changes on the bench, and what shows it. */
interface Held {
  desk: Desk;
  range: Range | undefined;
  /** The view as the cards over the strips show it. */
  readonly heads: Signal<BenchView>;
  /** Calls off what the cards are about to be shown. */
  stay: () => void;
  /** The strip of the chosen box. */
  readonly at: Signal<string | undefined>;
  readonly cells: LiveCells;
}

export function benchHand({ host, view, acts, nonce, measured }: BenchGridParts): BenchHand {
  const held = holdFirst(view, acts);
  const room = followRoom(
    host,
    () => held.desk.view,
    (metrics) => {
      table.lay(held.desk.view, metrics);
      measured(metrics);
    },
  );
  const editor = boxEditor(host.parentElement ?? host);
  const state = { heads: held.heads, metrics: room.metrics, at: held.at, acts };
  const mark = (live: LiveCell) => paintRange(live, held.range, held.desk.positions);
  const table = benchTable({
    host,
    nonce,
    state,
    shown: () => held.desk.view,
    cells: held.cells,
    mark,
    focused: (spot) => follow(held, spot, mark),
  });
  const take = (range: Range, focus = true) => {
    takeRange(held, range, mark, (tip) => {
      if (focus) table.focus(tip);
    });
  };
  const bring = (spot: Spot) => takeRange(held, single(spot), mark, table.bring);
  const write = (spot: Spot, typed?: string) => {
    const { desk } = held;
    openBox({ desk, spot, typed, editor, cell: () => table.cellAt(spot), goOn: (next) => take(single(next)) });
  };
  const show = (next: BenchView) => {
    const range = showView(held, next, { table, room });
    if (range) take(range, host.contains(document.activeElement) && cellMark(document.activeElement) !== undefined);
  };
  const destroy = () => {
    held.stay();
    room.leave();
    editor.close();
    table.destroy();
  };
  const remark = () => held.cells.each(mark);
  return { desk: () => held.desk, range: () => held.range, table, editor, take, bring, write, show, remark, destroy };
}

function holdFirst(view: BenchView, acts: BenchActs): Held {
  return {
    desk: { view, positions: positionsOf(view), acts },
    range: undefined,
    heads: signal(view),
    stay: () => undefined,
    at: signal(undefined),
    cells: liveCells(view, acts),
  };
}

type Mark = (live: LiveCell) => void;

/** `reach` gives the tip the keyboard, before anything is marked: the browser lays out there what was drawn before. */
function takeRange(held: Held, range: Range, mark: Mark, reach?: (tip: Spot) => void): void {
  const { positions, acts } = held.desk;
  const before = held.range?.tip;
  held.range = kept(positions.extent, range);
  const { tip } = held.range;
  reach?.(tip);
  held.cells.each(mark);
  held.at.value = positions.columnAt(tip.column);
  if (before?.row !== tip.row || before.column !== tip.column) acts.choose(positions.boxAt(tip));
}

/** The grid gave its focus to a cell by itself. */
function follow(held: Held, spot: Spot, mark: Mark): void {
  const tip = held.range?.tip;
  if (tip?.row !== spot.row || tip.column !== spot.column) takeRange(held, single(spot), mark);
}

/** Shows another view; answers where the range's boxes stand now, if rows or strips have moved. */
function showView(
  held: Held,
  next: BenchView,
  { table, room }: { readonly table: BenchTable; readonly room: FollowedRoom },
): Range | undefined {
  const names = held.range && namesOf(held.desk.positions, held.range);
  const before = held.desk.view;
  held.desk = { view: next, positions: positionsOf(next), acts: held.desk.acts };
  const moved = table.show(before, next, room.metrics.value);
  held.cells.show(next);
  showHeads(held, next, moved);
  room.measure();
  return moved && names ? rangeOf(held.desk.positions, names) : undefined;
}

/** The cards over the strips follow the boxes a frame later, unless other strips stand there now. */
function showHeads(held: Held, next: BenchView, atOnce: boolean): void {
  held.stay();
  if (atOnce) held.heads.value = next;
  else held.stay = afterFrame(() => (held.heads.value = next));
}
