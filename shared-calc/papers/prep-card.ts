import { byDay, type Day } from '#shared-calc/calendar/day.ts';
import { prepActs } from '#shared-calc/cautions/acts.ts';
import { eachOnce, type SaidCaution } from '#shared-calc/cautions/all-cautions.ts';
import type { PrepPlan } from '#shared-calc/prepare/prep-plan.ts';
import type { PrepStep, StepState } from '#shared-calc/prepare/prep-steps.ts';
import type { SaidDays } from '#shared-calc/prepare/say-day.ts';
import { cautionsOf } from '#shared-calc/prepare/act-cautions.ts';
import { paperDay } from './paper-words.ts';
import { stepWords, type AnnouncedStep } from './step-words.ts';

/** One day's act of a prep plan. */
export interface PrepRow {
  readonly step: AnnouncedStep;
  /** `Order plants`, `Plants in, to quarantine`. */
  readonly act: string;
  readonly date: Day;
  readonly is: 'order' | 'done';
  readonly state: StepState;
  /** What is to be known of it: `overdue: ask`. */
  readonly says?: string;
  /** The first step of the chain that decides the handover. */
  readonly decides: boolean;
  readonly cautions: readonly SaidCaution[];
}

/** A prep plan day by day, to tick off: orders and completed steps by date, each with its cautions. */
export function prepRows(plan: PrepPlan, days: SaidDays): readonly PrepRow[] {
  const rows = plan.steps.flatMap((step): PrepRow[] => [
    ...(step.orderBy === undefined ? [] : [orderRow(plan, step.step, step.orderBy)]),
    doneRow(plan, step, days),
  ]);
  const handover: PrepRow = {
    step: 'handover',
    act: stepWords.handover.done,
    date: plan.handover,
    is: 'done',
    state: plan.handedOverOn === undefined ? 'open' : 'done',
    decides: plan.decides.first === 'handover',
    cautions: cautionsOf(prepActs.handover),
  };
  return [...rows, handover].toSorted(byDay(({ date }) => date));
}

function doneRow(plan: PrepPlan, of: PrepStep, days: SaidDays): PrepRow {
  const { step, state, date } = of;
  const says = sayState(of, days);
  return {
    step,
    act: actOf(plan, of),
    date,
    is: 'done',
    state,
    ...(says !== undefined && { says }),
    decides: plan.decides.first === step && plan.decides.is !== 'to order',
    cautions: cautionsOf(prepActs[step]),
  };
}

function actOf({ clientTank }: PrepPlan, { step, state, tub }: PrepStep): string {
  if (step === 'tank' && clientTank) return "The client's tank is here";
  if (step === 'springtails' && state === 'open' && tub !== undefined) return `Keep springtails of tub ${tub}`;
  return stepWords[step].done;
}

/** `overdue: ask`, `due 12 March`, `apart until 1 April`; `undefined` where its day says all. */
export function sayState({ state, due, overdue, cleared, orderBy }: PrepStep, days: SaidDays): string | undefined {
  if (overdue) return 'overdue: ask';
  if (state === 'ordered' && due !== undefined) return `due ${paperDay(due, days)}`;
  if (state === 'in' && cleared !== undefined) return `apart until ${paperDay(cleared, days)}`;
  return orderBy === undefined && due !== undefined ? `due ${paperDay(due, days)}` : undefined;
}

/** What to mind at the acts of a plan, each wording once. */
export function planCautions(plan: PrepPlan): readonly SaidCaution[] {
  return eachOnce(prepRows(plan, {}).flatMap(({ cautions }) => cautions));
}

function orderRow(plan: PrepPlan, step: AnnouncedStep, date: Day): PrepRow {
  const decides = plan.decides.first === step && plan.decides.is === 'to order';
  return {
    step,
    act: stepWords[step].order ?? stepWords[step].done,
    date,
    is: 'order',
    state: 'open',
    decides,
    cautions: cautionsOf(prepActs.order),
  };
}
