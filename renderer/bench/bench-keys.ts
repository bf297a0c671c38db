import type { Desk } from './bench-writing.ts';
import { clearRange, fillRight } from './bench-writing.ts';
import type { KeyAct } from './grid-keys.ts';
import { atEdge, single, stepped, tabbed } from './range.ts';
import type { Range, Spot } from './range.ts';

/** What a key reaches of the bench. */
export interface BenchHands {
  readonly desk: Desk;
  readonly range: Range;
  readonly take: (range: Range) => void;
  /** Opens the chosen box for writing. */
  readonly write: (typed?: string) => void;
}

/** Does what a key asks; `false` leaves the key to the page. */
export function runKey(act: KeyAct, hands: BenchHands): boolean {
  const { desk, range, take } = hands;
  const { extent } = desk.positions;
  switch (act.act) {
    case 'move':
      return walked(hands, stepped(extent, range.tip, act.to, act.jump), act.extend);
    case 'edge':
      return walked(hands, atEdge(extent, range.tip, act.to), act.extend);
    case 'next':
      return onward(hands, tabbed(extent, range.tip, act.back));
    case 'open':
      return opened(hands, act.all);
    case 'write':
      hands.write(act.typed);
      return true;
    case 'clear':
      clearRange(desk, range);
      return true;
    case 'fill right':
      fillRight(desk, range);
      return true;
    case 'all':
      take({ anchor: { row: 0, column: 1 }, tip: { row: extent.rows - 1, column: extent.columns - 1 } });
      return true;
    case 'back to one':
      take(single(range.tip));
      return true;
  }
}

function walked({ range, take }: BenchHands, to: Spot, extend: boolean): boolean {
  take(extend ? { anchor: range.anchor, tip: to } : single(to));
  return true;
}

function onward({ take }: BenchHands, to: Spot | undefined): boolean {
  if (!to) return false;
  take(single(to));
  return true;
}

/** Enter opens a section or a box; with Shift it brings a section's tucked lines out. */
function opened({ desk, range, write }: BenchHands, all: boolean): boolean {
  const row = desk.positions.rowAt(range.tip.row);
  if (row?.kind === 'section') {
    if (all) desk.acts.showAll(row.id);
    else desk.acts.fold(row.id);
  } else write();
  return true;
}
