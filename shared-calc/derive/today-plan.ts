import type { DoneStep } from '#shared-calc/fields/done.ts';
import type { Derived, DerivedJob } from './derived.ts';
import { planActs } from './plan-acts.ts';
import { isUnderWay } from './planned-jobs.ts';
import { isBefore } from '#shared-calc/jobs/move-job.ts';
import type { PrepPlan } from '#shared-calc/prepare/prep-plan.ts';
import type { PrepStepName } from '#shared-calc/prepare/prep-steps.ts';
import type { Job, Records } from '#shared-calc/records/records.ts';
import { sayDay, type SaidDays } from '#shared-calc/prepare/say-day.ts';
import { builder, ofJob, type TodayDraft } from './today-item.ts';

const orderWords: Readonly<Partial<Record<PrepStepName, string>>> = {
  tank: 'order the tank',
  hardscape: 'order wood, cork and sealant',
  plants: 'order plants',
  media: 'order media',
  panes: 'order the panes',
  lamps: 'order lamps and misting',
  leaves: 'order leaves',
};

const doWords: Readonly<Record<DoneStep, string>> = {
  panel: 'glue the background',
  looks: 'look over plants',
  cleared: 'clear plants',
  springtails: 'start springtails',
  blend: 'blend the mix',
  leaves: 'treat the leaves',
  build: 'build',
  watch: 'sign the watch',
  handover: 'hand over',
};

/** Goods of a paid job that are still to be ordered, on the last day to do so. */
export function goodsItems({ job, plan }: DerivedJob, { records, display }: Derived): readonly TodayDraft[] {
  if (!isUnderWay(job) || isOrderedElsewhere(job, records)) return [];
  const dates = plan();
  if (!dates.ok) return [];
  const { plan: prep } = dates.value;
  return prep.steps.flatMap(({ step, orderBy }): readonly TodayDraft[] =>
    orderBy === undefined
      ? []
      : [
          {
            ...ofJob(job, `order ${step}`),
            day: orderBy,
            what: orderWords[step] ?? `order ${step}`,
            who: builder,
            why: whyOf(prep, display),
            decides: prep.decides.is === 'to order' && prep.decides.first === step,
            tick: { is: 'go' },
          },
        ],
  );
}

/** A job that was moved on without an order in the book. */
function isOrderedElsewhere({ id, state }: Job, { order }: Pick<Records, 'order'>): boolean {
  if (isBefore(state, 'ordered')) return false;
  return ![...order.values()].some(({ lines }) => lines.some((line) => line.for.some(({ job }) => job === id)));
}

/** Plants of a paid job that stand apart are looked over, and cleared at the end. */
export function quarantineItems(job: DerivedJob, derived: Derived): readonly TodayDraft[] {
  return actItems(job, derived, isOfQuarantine);
}

/** What else is to be done for a paid job, on its latest days. */
export function stepItems(job: DerivedJob, derived: Derived): readonly TodayDraft[] {
  return actItems(job, derived, (step) => !isOfQuarantine(step));
}

function isOfQuarantine(step: DoneStep): boolean {
  return step === 'looks' || step === 'cleared';
}

function actItems(
  { job, plan }: DerivedJob,
  { records, calendar, display }: Derived,
  passes: (step: DoneStep) => boolean,
): readonly TodayDraft[] {
  if (!isUnderWay(job)) return [];
  const dates = plan();
  if (!dates.ok) return [];
  const { plan: prep } = dates.value;
  // Animals out of a tub that stands are harvested: an item of the tub.
  const isHarvested = prep.steps.some(({ step, tub }) => step === 'springtails' && tub !== undefined);
  const acts = planActs({ job: job.id, plan: prep, records, calendar });
  return acts
    .filter(({ step }) => passes(step) && !(isHarvested && step === 'springtails'))
    .map(({ step, day, who, ends, decides }) => ({
      ...ofJob(job, step === 'looks' ? `looks ${day}` : step),
      day,
      what: doWords[step],
      who,
      why: whyOf(prep, display),
      decides,
      tick: { is: 'did', step, ends },
    }));
}

function whyOf({ build, handover }: PrepPlan, days: SaidDays): string {
  return `Build on ${sayDay(build, days)}, handover on ${sayDay(handover, days)}`;
}
