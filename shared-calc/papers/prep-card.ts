import { byDay, type Day } from '#shared-calc/calendar/day.ts';
import { prepActs } from '#shared-calc/cautions/acts.ts';
import { eachOnce, type SaidCaution } from '#shared-calc/cautions/all-cautions.ts';
import type { PrepPlan } from '#shared-calc/prepare/prep-plan.ts';
import { cautionsOf } from '#shared-calc/prepare/act-cautions.ts';
import { stepWords, type AnnouncedStep } from './step-words.ts';

/** One day's act of a prep plan. */
export interface PrepRow {
  readonly step: AnnouncedStep;
  /** `Order plants`, `Plants in, to quarantine`. */
  readonly act: string;
  readonly date: Day;
  readonly is: 'order' | 'done';
  /** The first step of the chain that decides the handover. */
  readonly decides: boolean;
  readonly cautions: readonly SaidCaution[];
}

/** A prep plan day by day, to tick off: orders and completed steps by date, each with its cautions. */
export function prepRows(plan: PrepPlan): readonly PrepRow[] {
  const steps = [...plan.steps, ...(plan.hardscape ? [plan.hardscape] : [])];
  const rows = steps.flatMap(({ step, date, orderBy }): PrepRow[] => [
    ...(orderBy === undefined ? [] : [orderRow(plan, step, orderBy)]),
    {
      step,
      act: step === 'tank' && plan.clientTank ? "The client's tank is here" : stepWords[step].done,
      date,
      is: 'done',
      decides: plan.decides.first === step && !plan.decides.ordered,
      cautions: cautionsOf(prepActs[step]),
    },
  ]);
  const handover: PrepRow = {
    step: 'handover',
    act: stepWords.handover.done,
    date: plan.handover,
    is: 'done',
    decides: false,
    cautions: cautionsOf(prepActs.handover),
  };
  return [...rows, handover].toSorted(byDay(({ date }) => date));
}

/** What to mind at the acts of a plan, each wording once. */
export function planCautions(plan: PrepPlan): readonly SaidCaution[] {
  return eachOnce(prepRows(plan).flatMap(({ cautions }) => cautions));
}

function orderRow(plan: PrepPlan, step: AnnouncedStep, date: Day): PrepRow {
  const decides = plan.decides.first === step && plan.decides.ordered;
  return {
    step,
    act: stepWords[step].order ?? stepWords[step].done,
    date,
    is: 'order',
    decides,
    cautions: cautionsOf(prepActs.order),
  };
}
