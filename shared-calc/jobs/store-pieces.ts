import type { Day } from '#shared-calc/calendar/day.ts';
import type { Records, StockEntry } from '#shared-calc/records/records.ts';
import { putRecords } from './put-records.ts';

/** An amount below this counts as zero: binary noise. */
export const NOTHING = 1e-9;

/** A part of one entry of the Store. */
export interface StorePiece {
  readonly entry: StockEntry;
  readonly amount: number;
}

export interface Wanted {
  readonly material: string;
  readonly amount: number;
  readonly on: Day;
  /** Stock reserved for this job may be used, and is used first. */
  readonly job?: string;
}

/**
 * Entries to take an amount from, in this order: reserved for the job, opened, soonest past its best. Never what is
 * reserved for another job, in quarantine or past its best. The pieces add up to less than asked if the Store has less.
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

/** The rest of an entry after a piece is taken; nothing if all of it was taken. */
export function remainder({ entry, amount }: StorePiece): StockEntry | undefined {
  const left = entry.amount - amount;
  return left > NOTHING ? { ...entry, amount: left } : undefined;
}

/** The Store after pieces are taken out of it; what is left of an entry is opened. */
export function withoutPieces(stockEntry: Records['stockEntry'], pieces: readonly StorePiece[]): Records['stockEntry'] {
  const left = pieces.flatMap((piece) => remainder(piece) ?? []).map((rest) => ({ ...rest, sealed: false }));
  return putRecords(
    stockEntry,
    left,
    pieces.filter((piece) => !remainder(piece)).map(({ entry }) => entry.id),
  );
}

export function amountOf(pieces: readonly StorePiece[]): number {
  return pieces.reduce((sum, piece) => sum + piece.amount, 0);
}

function canGive(entry: StockEntry, on: Day, job: string | undefined): boolean {
  const spoken = entry.reservedFor !== undefined && entry.reservedFor !== job;
  const inQuarantine = entry.quarantineUntil !== undefined && entry.quarantineUntil > on;
  const past = entry.bestBefore !== undefined && entry.bestBefore < on;
  return !spoken && !inQuarantine && !past;
}

function byUse(one: StockEntry, other: StockEntry): number {
  const reserved = Number(other.reservedFor !== undefined) - Number(one.reservedFor !== undefined);
  const opened = Number(one.sealed) - Number(other.sealed);
  return reserved || opened || compareDays(one.bestBefore, other.bestBefore) || (one.id < other.id ? -1 : 1);
}

/** The earlier first; no day sorts last. */
function compareDays(one: Day | undefined, other: Day | undefined): number {
  if (one === other) return 0;
  if (one === undefined) return 1;
  return other === undefined || one < other ? -1 : 1;
}
