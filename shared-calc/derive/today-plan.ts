import type { DerivedJob } from './derived.ts';
import { isUnderWay } from './planned-jobs.ts';
import { isBefore } from '#shared-calc/jobs/move-job.ts';
import type { PrepPlan } from '#shared-calc/prepare/prep-plan.ts';
import type { PrepStepName } from '#shared-calc/prepare/prep-steps.ts';
import { sayDay } from '#shared-calc/prepare/say-day.ts';
import { builder, grower, ofJob, type TodayDraft } from './today-item.ts';

type Step = PrepStepName | 'hardscape';

const orderWords: Readonly<Partial<Record<Step, string>>> = {
  tank: 'order the tank',
  hardscape: 'order wood, cork and sealant',
  plants: 'order plants',
  media: 'order media',
  panes: 'order the panes',
  lamps: 'order lamps and misting',
};

const doWords: Readonly<Partial<Record<Step, readonly [what: string, who: string]>>> = {
  panel: ['glue the background', builder],
  springtails: ['start springtails', grower],
  leaves: ['treat the leaves', grower],
  build: ['build', builder],
};

/** Goods of a paid job that are still to be ordered, on the last day to do so. */
export function goodsItems({ job, plan }: DerivedJob): readonly TodayDraft[] {
  if (!isUnderWay(job) || !isBefore(job.state, 'ordered')) return [];
  const dates = plan();
  if (!dates.ok) return [];
  const { plan: prep } = dates.value;
  return stepsOf(prep).flatMap(({ step, orderBy }): readonly TodayDraft[] =>
    orderBy === undefined
      ? []
      : [
          {
            ...ofJob(job, `order ${step}`),
            day: orderBy,
            what: orderWords[step] ?? `order ${step}`,
            who: builder,
            why: whyOf(prep),
            decides: prep.decides.ordered && prep.decides.first === step,
            tick: { is: 'go' },
          },
        ],
  );
}

/** The other open steps of a paid job, on their latest days. */
export function stepItems({ job, plan }: DerivedJob): readonly TodayDraft[] {
  if (!isUnderWay(job)) return [];
  const dates = plan();
  if (!dates.ok) return [];
  const { plan: prep } = dates.value;
  const open = isBefore(job.state, 'built') ? stepsOf(prep) : [];
  const items = open.flatMap(({ step, date }): readonly TodayDraft[] => {
    const [what, who] = doWords[step] ?? [];
    if (what === undefined || who === undefined) return [];
    return [
      {
        ...ofJob(job, step),
        day: date,
        what,
        who,
        why: whyOf(prep),
        decides: !prep.decides.ordered && prep.decides.first === step,
        tick: { is: 'go' },
      },
    ];
  });
  return [
    ...items,
    {
      ...ofJob(job, 'handover'),
      day: prep.handover,
      what: 'hand over',
      who: builder,
      why: whyOf(prep),
      tick: { is: 'go' },
    },
  ];
}

function stepsOf({ steps, hardscape }: PrepPlan) {
  return [...steps, ...(hardscape ? [hardscape] : [])];
}

function whyOf({ build, handover }: PrepPlan): string {
  return `Build on ${sayDay(build)}, handover on ${sayDay(handover)}`;
}
