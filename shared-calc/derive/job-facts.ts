import { addDays, type Day } from '#shared-calc/calendar/day.ts';
import { previousOpen } from '#shared-calc/calendar/work-calendar.ts';
import { doneSteps, type DoneStep } from '#shared-calc/fields/done.ts';
import { isBefore } from '#shared-calc/jobs/move-job.ts';
import type { PlanFacts } from '#shared-calc/prepare/plan-facts.ts';
import type { PlanWish } from '#shared-calc/prepare/prep-plan.ts';
import { withFacts, type StepFact } from '#shared-calc/prepare/step-facts.ts';
import type { Done, Job, Records } from '#shared-calc/records/records.ts';

/** The entries that end a step of a job, the last of each. */
export function stepsDone({ done }: Pick<Records, 'done'>, job: string): ReadonlyMap<DoneStep, Done> {
  const found = new Map<DoneStep, Done>();
  for (const each of done.values()) {
    const step = doneSteps.find((name) => name === each.step);
    if (!step || each.job !== job || !each.ends) continue;
    const before = found.get(step);
    if (!before || before.on <= each.on) found.set(step, each);
  }
  return found;
}

/** The input of a job's plan with what the book tells of its steps. */
export function withJobFacts(
  facts: PlanFacts,
  { job, records, wish }: { readonly job: Job; readonly records: Pick<Records, 'done'>; readonly wish: PlanWish },
): PlanFacts {
  const told = [...stepsDone(records, job.id)].flatMap(([step, { on }]) => factOf(step, on));
  const known = withFacts(facts, told);
  return { ...known, done: { ...byState(job, facts, wish), ...known.done } };
}

function factOf(step: DoneStep, on: Day): readonly StepFact[] {
  if (step === 'looks' || step === 'blend') return [];
  return step === 'cleared' ? [{ step: 'plants', what: 'cleared', on }] : [{ step, what: 'done', on }];
}

/** A job that was moved on without a day for it was built and handed over as wanted, so far as nobody wrote otherwise. */
function byState({ state, handover }: Job, { settleIn }: PlanFacts, { on, calendar }: PlanWish): PlanFacts['done'] {
  if (state === 'closed' || isBefore(state, 'built')) return {};
  const asWanted = handover === undefined ? on : previousOpen(addDays(handover, -settleIn), calendar);
  const build = asWanted < on ? asWanted : on;
  return isBefore(state, 'handed over') ? { build } : { build, handover: handover ?? on };
}
