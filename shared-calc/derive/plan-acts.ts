import { addDays, type Day } from '#shared-calc/calendar/day.ts';
import { shiftWorkdays } from '#shared-calc/calendar/shift-workdays.ts';
import type { WorkCalendar } from '#shared-calc/calendar/work-calendar.ts';
import type { DoneStep } from '#shared-calc/fields/done.ts';
import type { PrepPlan } from '#shared-calc/prepare/prep-plan.ts';
import type { PrepStep, PrepStepName } from '#shared-calc/prepare/prep-steps.ts';
import type { Records } from '#shared-calc/records/records.ts';

/** What somebody does for a job and then writes as done; goods are ordered and taken in by acts of their own. */
export interface PlanAct {
  readonly step: DoneStep;
  /** The last day on which it should be done. */
  readonly day: Day;
  /** Whose hour it is: a rate. */
  readonly who: string;
  /** Written as done, the step is over; plants are looked over more than once. */
  readonly ends: boolean;
  readonly decides: boolean;
}

interface ActsOf {
  readonly job: string;
  readonly plan: PrepPlan;
  readonly records: Pick<Records, 'done'>;
  readonly calendar: WorkCalendar;
}

/** Days after plants came in on which they are looked over. */
const LOOKS = [7, 14, 21, 28];
/** The mix rests a day. */
const BLEND_BEFORE = 2;

const BUILDER = 'R-builder';
const GROWER = 'R-grower';
const whose: Readonly<Record<DoneStep, string>> = {
  panel: BUILDER,
  looks: GROWER,
  cleared: GROWER,
  springtails: GROWER,
  blend: BUILDER,
  leaves: GROWER,
  build: BUILDER,
  watch: BUILDER,
  handover: BUILDER,
};

/** Whose hour a step is, unless said otherwise. */
export function whoDoes(step: string): string {
  return Object.entries(whose).find(([name]) => name === step)?.[1] ?? BUILDER;
}

/** All that is still to be done of a job's plan, each on its last day; goods apart. */
export function planActs(of: ActsOf): readonly PlanAct[] {
  const { plan } = of;
  const isBuilt = stepOf(plan, 'build')?.state === 'done';
  return [
    ...(isBuilt ? [] : [...openStep(plan, 'panel'), ...plantActs(of), ...openStep(plan, 'springtails')]),
    ...(isBuilt ? [] : [...blendAct(of), ...openStep(plan, 'leaves'), ...openStep(plan, 'build')]),
    ...(plan.watchedOn === undefined && plan.handedOverOn === undefined ? [actOf(plan, 'watch', plan.handover)] : []),
    ...(plan.handedOverOn === undefined ? [actOf(plan, 'handover', plan.handover)] : []),
  ];
}

function stepOf({ steps }: PrepPlan, name: PrepStepName): PrepStep | undefined {
  return steps.find(({ step }) => step === name);
}

/** Leaves that are in or on their way are still to be treated. */
function openStep(plan: PrepPlan, name: PrepStepName & DoneStep): readonly PlanAct[] {
  const step = stepOf(plan, name);
  return step && step.state !== 'done' ? [actOf(plan, name, step.date)] : [];
}

function actOf({ decides }: PrepPlan, step: DoneStep, day: Day): PlanAct {
  const isFirst = decides.is === 'to do' && decides.first === step;
  return { step, day, who: whose[step], ends: step !== 'looks', decides: isFirst };
}

/** The next look at plants that stand apart, and when they are cleared. */
function plantActs({ job, plan, records }: ActsOf): readonly PlanAct[] {
  const plants = stepOf(plan, 'plants');
  if (plants?.on === undefined || plants.cleared === undefined) return [];
  const { on, cleared } = plants;
  const ofJob = [...records.done.values()].filter((each) => each.job === job);
  if (ofJob.some(({ step, ends }) => step === 'cleared' && ends)) return [];
  const looked = ofJob.filter(({ step }) => step === 'looks').map((each) => each.on);
  const last = looked.toSorted().at(-1) ?? on;
  const next = LOOKS.map((days) => addDays(on, days)).find((day) => day > last && day < cleared);
  return [...(next === undefined ? [] : [actOf(plan, 'looks', next)]), actOf(plan, 'cleared', cleared)];
}

function blendAct({ job, plan, records, calendar }: ActsOf): readonly PlanAct[] {
  const isBlended = [...records.done.values()].some((each) => each.job === job && each.step === 'blend' && each.ends);
  if (isBlended || stepOf(plan, 'media')?.state !== 'in') return [];
  return [actOf(plan, 'blend', shiftWorkdays(plan.build, -BLEND_BEFORE, calendar))];
}
