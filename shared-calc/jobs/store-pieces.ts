import type { Day } from '#shared-calc/calendar/day.ts';
import type { StockEntry } from '#shared-calc/records/records.ts';

/** Below this an amount is nothing: binary noise. */
export const NOTHING = 1e-9;

/** So much of one entry of the Store. */
export interface StorePiece {
  readonly entry: StockEntry;
  readonly amount: number;
}

export interface Wanted {
  readonly material: string;
  readonly amount: number;
  readonly on: Day;
  /** What is kept for this job may be taken, and is taken first. */
  readonly job?: string;
}

/**
 * Entries to take an amount from, in this order: kept for the job, opened, soonest past its best. What is kept for
 * another job, in quarantine or past its best stays. Fewer pieces than asked where the Store has less.
 */
export function storePieces(
  entries: Iterable<StockEntry>,
  { material, amount, on, job }: Wanted,
): readonly StorePiece[] {
  const free = [...entries].filter((entry) => entry.material === material && canGive(entry, on, job));
  const pieces: StorePiece[] = [];
  let left = amount;
  for (const entry of free.toSorted(byUse)) {
    if (left <= NOTHING) break;
    const part = Math.min(left, entry.amount);
    if (part > NOTHING) pieces.push({ entry, amount: part });
    left -= part;
  }
  return pieces;
}

/** What an entry keeps once a piece of it is gone; nothing where that was all of it. */
export function remainder({ entry, amount }: StorePiece): StockEntry | undefined {
  const left = entry.amount - amount;
  return left > NOTHING ? { ...entry, amount: left } : undefined;
}

export function amountOf(pieces: readonly StorePiece[]): number {
  return pieces.reduce((sum, piece) => sum + piece.amount, 0);
}

function canGive(entry: StockEntry, on: Day, job: string | undefined): boolean {
  const spoken = entry.reservedFor !== undefined && entry.reservedFor !== job;
  const held = entry.quarantineUntil !== undefined && entry.quarantineUntil > on;
  const past = entry.bestBefore !== undefined && entry.bestBefore < on;
  return !spoken && !held && !past;
}

function byUse(one: StockEntry, other: StockEntry): number {
  const kept = Number(other.reservedFor !== undefined) - Number(one.reservedFor !== undefined);
  const opened = Number(one.sealed) - Number(other.sealed);
  return kept || opened || compareDays(one.bestBefore, other.bestBefore) || (one.id < other.id ? -1 : 1);
}

/** The earlier first; what has no day keeps longest. */
function compareDays(one: Day | undefined, other: Day | undefined): number {
  if (one === other) return 0;
  if (one === undefined) return 1;
  return other === undefined || one < other ? -1 : 1;
}
