import type { BenchActs } from './bench-acts.ts';
import type { Positions } from './bench-positions.ts';
import { readClipboard, writeClipboard } from './clipboard-text.ts';
import { fillRightPlan, pastePlan } from './paste-plan.ts';
import type { SpotText } from './paste-plan.ts';
import { rectOf } from './range.ts';
import type { Range, Spot } from './range.ts';
import type { BenchView, BoxChange, BoxPlace } from './view-model.ts';

/** What the bench's writing reads and asks. */
export interface Desk {
  readonly view: BenchView;
  readonly positions: Positions;
  readonly acts: BenchActs;
}

/** The range as tab-separated text; names and sums copy too. */
export function copyRange(desk: Desk, range: Range): string {
  const rect = rectOf(range);
  const rows: string[][] = [];
  for (let row = rect.top; row <= rect.bottom; row += 1) {
    const texts: string[] = [];
    for (let column = rect.left; column <= rect.right; column += 1) texts.push(copiedAt(desk, { row, column }));
    rows.push(texts);
  }
  return writeClipboard(rows);
}

export function pasteOver(desk: Desk, range: Range, text: string): void {
  writeAll(desk, pastePlan(readClipboard(text), rectOf(range), desk.positions.extent));
}

export function fillRight(desk: Desk, range: Range): void {
  const plan = fillRightPlan(rectOf(range), (spot) => (desk.positions.boxAt(spot) ? copiedAt(desk, spot) : undefined));
  writeAll(desk, plan);
}

export function clearRange(desk: Desk, range: Range): void {
  const rect = rectOf(range);
  const places: BoxPlace[] = [];
  for (let row = rect.top; row <= rect.bottom; row += 1) {
    for (let column = rect.left; column <= rect.right; column += 1) {
      const place = desk.positions.boxAt({ row, column });
      if (place && isOpen(desk, place)) places.push(place);
    }
  }
  if (places.length > 0) desk.acts.clear(places);
  else desk.acts.refuse('There is nothing here that can be taken back to the house.');
}

/** One change of all boxes that can be written; the rest is named, and what stays the same is not written. */
function writeAll(desk: Desk, plan: readonly SpotText[]): void {
  const changes: BoxChange[] = [];
  let closed = 0;
  for (const spot of plan) {
    const place = desk.positions.boxAt(spot);
    if (!place) continue;
    if (!isOpen(desk, place)) closed += 1;
    else if (copiedAt(desk, spot) !== spot.text) changes.push({ ...place, text: spot.text });
  }
  if (closed > 0)
    desk.acts.refuse(`${closed === 1 ? '1 box is' : `${closed} boxes are`} issued and cannot be written in.`);
  if (changes.length === 0) return;
  const refused = desk.acts.write(changes);
  if (refused !== undefined) desk.acts.refuse(refused);
}

function isOpen({ view }: Desk, { row, column }: BoxPlace): boolean {
  return view.boxOf(row, column)?.closed === false;
}

function copiedAt({ view, positions }: Desk, spot: Spot): string {
  const row = positions.rowAt(spot.row);
  const column = positions.columnAt(spot.column);
  if (!row) return '';
  if (column === undefined) return row.kind === 'section' ? row.title : row.label;
  if (row.kind === 'foot') return view.footOf(row.id, column).copied;
  // An open section shows no headline: its lines say it.
  if (row.kind === 'section' && row.open) return '';
  return view.boxOf(row.id, column)?.copied ?? '';
}
