import type { Day } from '#shared-calc/calendar/day.ts';
import type { Change } from '#shared-calc/records/change.ts';
import { diffRecords } from '#shared-calc/records/diff-records.ts';
import type { Records, StockEntry } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { nearestName } from '#shared-calc/rule/nearest.ts';
import { findJob, freeId } from './find-job.ts';
import type { JobFault } from './job-fault.ts';
import { putRecords } from './put-records.ts';
import { amountOf, NOTHING, remainder, storePieces, type StorePiece } from './store-pieces.ts';

export interface Reservation {
  readonly job: string;
  readonly material: string;
  /** In the material's unit. */
  readonly amount: number;
  readonly on: Day;
}

/** Reserves an amount of a material for a job, so that no other job gets it. Refused if the Store has less to give. */
export function reserveStock(records: Records, asked: Reservation): Result<Change, JobFault> {
  const { job: id, material, amount, on } = asked;
  const job = findJob(records, id);
  if (!job.ok) return job;
  const unit = unitOfGoods(records, material);
  if (unit === undefined) return failed(noMaterial(records, material));
  const pieces = storePieces(records.stockEntry.values(), { material, amount, on });
  const free = amountOf(pieces);
  if (amount - free > NOTHING) return failed({ kind: 'not-in-store', material, asked: amount, free, unit });
  const stockEntry = keep(records.stockEntry, pieces, id);
  return ok(diffRecords(`${amount} ${unit} of ${material} kept for ${id}`, records, { ...records, stockEntry }));
}

/** Releases what is reserved for a job. */
export function releaseStock(records: Records, id: string): Change {
  return diffRecords(`nothing kept for ${id} any more`, records, { ...records, stockEntry: released(records, id) });
}

/** The Store with nothing reserved for a job. */
export function released({ stockEntry }: Pick<Records, 'stockEntry'>, job: string): Records['stockEntry'] {
  const reserved = [...stockEntry.values()].filter((entry) => entry.reservedFor === job);
  return putRecords(stockEntry, reserved.map(unreserved));
}

function unreserved(entry: StockEntry): StockEntry {
  const { reservedFor: _, ...rest } = entry;
  return rest;
}

function keep(store: Records['stockEntry'], pieces: readonly StorePiece[], job: string): Records['stockEntry'] {
  const next = new Map(store);
  for (const piece of pieces) {
    const rest = remainder(piece);
    const id = rest ? freeId(`${piece.entry.id}-${job}`, next) : piece.entry.id;
    const reserved: StockEntry = { ...piece.entry, id, amount: piece.amount, reservedFor: job };
    if (rest) next.set(rest.id, rest);
    next.set(id, reserved);
  }
  return next;
}

function unitOfGoods(records: Records, material: string): string | undefined {
  return records.material.get(material)?.unit ?? (records.tank.has(material) ? 'each' : undefined);
}

function noMaterial(records: Records, material: string): JobFault {
  const near = nearestName(material, [...records.material.keys(), ...records.tank.keys()]);
  return { kind: 'no-material', material, ...(near !== undefined && { near }) };
}
