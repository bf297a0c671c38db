import { squashChanges, type Change } from '#shared-calc/records/change.ts';
import { diffRecords } from '#shared-calc/records/diff-records.ts';
import { ok, type Result } from '#shared-calc/result.ts';
import type { Derived, DerivedJob } from '#shared-calc/derive/derived.ts';
import { findJob } from '#shared-calc/jobs/find-job.ts';
import type { JobFault } from '#shared-calc/jobs/job-fault.ts';
import { moveJob } from '#shared-calc/jobs/move-job.ts';
import { amountOf, NOTHING, storePieces, withoutPieces, type StorePiece } from '#shared-calc/jobs/store-pieces.ts';

export interface Short {
  readonly material: string;
  /** The amount that the Store did not have, in the material's unit. */
  readonly amount: number;
}

export interface TakenFromStore {
  readonly change: Change;
  readonly short: readonly Short[];
}

/** A built job: its state, and what the build took from the Store, as one change. */
export function buildJob(derived: Derived, id: string): Result<TakenFromStore, JobFault> {
  const moved = moveJob(derived.records, id, 'built');
  if (!moved.ok) return moved;
  const taken = takeFromStore(derived, id);
  if (!taken.ok) return taken;
  const { change, short } = taken.value;
  return ok({
    change: squashChanges(`${moved.value.label}, its materials out of the Store`, [moved.value, change]),
    short,
  });
}

/** Takes from the Store what a job's build uses by its bench. An estimate until the real use is recorded. */
export function takeFromStore(derived: Derived, id: string): Result<TakenFromStore, JobFault> {
  const { records, today: on } = derived;
  const uses = usesOf(derived, id);
  if (!uses.ok) return uses;
  const taken: StorePiece[] = [];
  const short: Short[] = [];
  for (const [material, amount] of uses.value) {
    const pieces = storePieces(records.stockEntry.values(), { material, amount, on, job: id });
    taken.push(...pieces);
    if (amount - amountOf(pieces) > NOTHING) short.push({ material, amount: amount - amountOf(pieces) });
  }
  const stockEntry = withoutPieces(records.stockEntry, taken);
  return ok({ change: diffRecords(`${id}: materials out of the Store`, records, { ...records, stockEntry }), short });
}

/** What a job's build uses of each material that comes in packs. */
export function usesOf({ records, job }: Derived, id: string): ReturnType<DerivedJob['uses']> {
  const found = findJob(records, id);
  if (!found.ok) return found;
  return job(id)?.uses() ?? ok(new Map());
}
