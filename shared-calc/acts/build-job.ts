import { goodsInLedger, isPlantGoods, kept, lotsOf, membersOf, NOTHING } from '#shared-calc/buy/ledger.ts';
import { partsSum, takeLots, type LotPart, type Taking } from '#shared-calc/buy/take-lots.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import { squashChanges, type Change } from '#shared-calc/records/change.ts';
import { ok, type Result } from '#shared-calc/result.ts';
import type { Derived, DerivedJob } from '#shared-calc/derive/derived.ts';
import { findJob } from '#shared-calc/jobs/find-job.ts';
import type { JobFault } from '#shared-calc/jobs/job-fault.ts';
import { moveJob } from '#shared-calc/jobs/move-job.ts';
import { moveIds, movesAdded, partMoves } from '#shared-calc/jobs/written-moves.ts';
import type { Records } from '#shared-calc/records/records.ts';

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

/**
 * Takes from the Store what a job's build uses by its bench, and all plants kept for it: none is left there when the
 * tank is built. An estimate until the real use is recorded.
 */
export function takeFromStore(derived: Derived, id: string): Result<TakenFromStore, JobFault> {
  const { records, today: on } = derived;
  const uses = usesOf(derived, id);
  if (!uses.ok) return uses;
  const parts: LotPart[] = [];
  const short: Short[] = [];
  for (const [material, amount] of uses.value) {
    const members = membersOf(records, material);
    const took = isPlantGoods(records, material)
      ? plantsTaken(records, { members, amount, on, job: id })
      : takeLots(records, { members, amount, on, job: id, from: 'usable' });
    parts.push(...took);
    const rest = amount - partsSum(took);
    if (rest > NOTHING) short.push({ material, amount: rest });
  }
  parts.push(...madeForIt(records, id, on));
  const moves = partMoves(parts, { on, what: 'used', job: id }, moveIds(records));
  return ok({ change: movesAdded(`${id}: materials out of the Store`, moves), short });
}

/** What was cut for the job or is a one-off line of it: nobody else can use it. */
function madeForIt(records: Records, job: string, on: Day): readonly LotPart[] {
  const isMade = (of: string) => records.material.get(of)?.sale === 'cut' || records.quoteLine.has(of);
  return goodsInLedger(records)
    .filter(isMade)
    .flatMap((of) => keptParts(records, { of, job, on }));
}

interface KeptGoods {
  readonly of: string;
  readonly job: string;
  readonly on: Day;
}

/** What is kept of some goods for a job, lot by lot. */
function keptParts(records: Records, { of, job, on }: KeptGoods): readonly LotPart[] {
  return lotsOf(records, of)
    .map((lot) => ({ lot, amount: kept(lot, job, on) }))
    .filter(({ amount }) => amount > NOTHING);
}

type PlantsTaking = Omit<Taking, 'from' | 'lot' | 'job'> & { readonly job: string };

/** Those kept for the job go into the tank, more than its bench asks for and out of quarantine as well. */
function plantsTaken(records: Records, taking: PlantsTaking): readonly LotPart[] {
  const { members, job, on } = taking;
  const own = members.flatMap((of) => keptParts(records, { of, job, on }));
  const { job: _, ...free } = { ...taking, amount: taking.amount - partsSum(own) };
  const more = takeLots(records, { ...free, from: 'usable' });
  const all = Map.groupBy([...own, ...more], ({ lot }) => lot);
  return [...all].map(([lot, parts]) => ({ lot, amount: partsSum(parts) }));
}

/** What a job's build uses of each material that comes in packs. */
export function usesOf({ records, job }: Derived, id: string): ReturnType<DerivedJob['uses']> {
  const found = findJob(records, id);
  if (!found.ok) return found;
  return job(id)?.uses() ?? ok(new Map());
}
