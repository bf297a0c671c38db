import type { Day } from '#shared-calc/calendar/day.ts';
import type { Derived } from '#shared-calc/derive/derived.ts';
import { isBefore, isGateOpen } from '#shared-calc/jobs/move-job.ts';
import type { PrepPlan } from '#shared-calc/prepare/prep-plan.ts';
import { goodsSteps, type PrepStep } from '#shared-calc/prepare/prep-steps.ts';
import { applyChange, squashChanges, type Change } from '#shared-calc/records/change.ts';
import type { Job } from '#shared-calc/records/records.ts';
import { ok, type Result } from '#shared-calc/result.ts';
import type { ActFault } from './act-fault.ts';
import { moveAndTake } from './move-acts.ts';
import type { Reason } from './reason.ts';

/**
 * A change with the moves that its facts bring with them: a job whose goods are ordered, whose plants are in, which has
 * all, is built or handed over is moved on in the same change, never back. What stands against the move refuses it all,
 * unless a reason is given.
 */
export function withMoves(
  derived: Derived,
  change: Change,
  { jobs, ...reason }: Reason & { readonly jobs: readonly string[] },
): Result<Change, ActFault> {
  let after = derived.update(applyChange(derived.records, change));
  const changes = [change];
  for (const id of jobs) {
    const state = stateByFacts(after, id);
    if (state === undefined) continue;
    const moved = moveAndTake(after, { job: id, state, ...reason });
    if (!moved.ok) return moved;
    changes.push(moved.value.change);
    after = after.update(applyChange(after.records, moved.value.change));
  }
  return ok(changes.length === 1 ? change : squashChanges(change.label, changes));
}

/** The state that a job is brought to by what has happened of it; `undefined` where it has come as far. */
function stateByFacts(derived: Derived, id: string): Job['state'] | undefined {
  const worked = derived.job(id);
  if (!worked || !isGateOpen(worked.job)) return undefined;
  const planned = worked.plan();
  const state = planned.ok ? reachedBy(planned.value.plan, derived.today) : undefined;
  return state !== undefined && isBefore(worked.job.state, state) ? state : undefined;
}

function reachedBy(plan: PrepPlan, today: Day): Job['state'] | undefined {
  if (plan.handedOverOn !== undefined) return 'handed over';
  if (plan.steps.some(({ step, state }) => step === 'build' && state === 'done')) {
    return plan.watchedOn === undefined ? 'built' : 'watching';
  }
  return byGoods(
    plan.steps.filter(({ step }) => goodsSteps.some((name) => name === step && name !== 'leaves')),
    today,
  );
}

/** Leaves come from the year's stock: the other goods say how far a job has come. */
function byGoods(goods: readonly PrepStep[], today: Day): Job['state'] | undefined {
  const plants = goods.find(({ step, state }) => step === 'plants' && state === 'in');
  const isApart = plants?.cleared !== undefined && plants.cleared > today;
  if (goods.length > 0 && goods.every(({ state }) => state === 'in') && !isApart) return 'ready to build';
  if (plants) return 'in quarantine';
  return goods.some(({ state }) => state !== 'open') ? 'ordered' : undefined;
}
