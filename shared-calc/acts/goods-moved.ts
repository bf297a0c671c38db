import { goodsInLedger, isPlantGoods, keptIn, lotsOf, stockOf } from '#shared-calc/buy/ledger.ts';
import { againstMove } from '#shared-calc/derive/against-move.ts';
import type { Derived } from '#shared-calc/derive/derived.ts';
import { isBefore, isGateOpen, moveJob } from '#shared-calc/jobs/move-job.ts';
import { applyChange, squashChanges, type Change } from '#shared-calc/records/change.ts';
import type { Job } from '#shared-calc/records/records.ts';

/**
 * A change of goods with the states that jobs reach by it, forward and never back: ordered with the first order, in
 * quarantine while plants of theirs stand apart, ready to build once all is in. A job without its deposit stays.
 */
export function withStates(derived: Derived, change: Change, jobs: readonly string[]): Change {
  let next = derived.update(applyChange(derived.records, change));
  let all = change;
  for (const id of jobs) {
    const job = next.records.job.get(id);
    const state = job && stateByGoods(next, job);
    if (!job || state === undefined || !isBefore(job.state, state)) continue;
    const moved = moveJob(next.records, id, state);
    if (!moved.ok) continue;
    all = squashChanges(change.label, [all, moved.value]);
    next = next.update(applyChange(next.records, moved.value));
  }
  return all;
}

function stateByGoods(derived: Derived, job: Job): Job['state'] | undefined {
  if (!isGateOpen(job) || job.state === 'closed') return undefined;
  if (isBefore(job.state, 'ordered')) return 'ordered';
  const against = againstMove(derived, job.id, 'ready to build');
  const isLacking = against.some(({ what }) => what === 'goods' || what === 'quarantine');
  if (!isLacking && !isWaitedFor(derived, job.id)) return 'ready to build';
  return hasPlantsApart(derived, job.id) ? 'in quarantine' : undefined;
}

/** Plants kept for a job that are in quarantine on the day. */
function hasPlantsApart({ records, today }: Derived, job: string): boolean {
  const plants = goodsInLedger(records).filter((of) => isPlantGoods(records, of));
  return plants.some((of) =>
    lotsOf(records, of).some((lot) => (lot.came.until ?? '') > today && keptIn(lot, today).has(job)),
  );
}

/** Something of an open order is still to come for the job. */
function isWaitedFor({ records, today: asked }: Derived, job: string): boolean {
  return goodsInLedger(records).some((of) => stockOf(records, [of], { asked }).lines.some(({ kept }) => kept.has(job)));
}
