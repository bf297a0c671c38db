import { addDays, type Day } from '#shared-calc/calendar/day.ts';
import type { DatedChain } from './dated-chains.ts';
import type { PlanFacts } from './plan-facts.ts';
import type { GoodsPart } from './planned-goods.ts';
import { expectedOn, type PlanDays } from './prep-chains.ts';
import { goodsSteps, prepSteps, type GoodsStep, type PrepStep, type PrepStepName } from './prep-steps.ts';

interface Planned {
  readonly at: PlanDays;
  readonly build: Day;
  readonly dated: readonly DatedChain[];
}

/** The steps of a plan, each with its state and its day. */
export function stepsOfPlan(facts: PlanFacts, planned: Planned): readonly PrepStep[] {
  return prepSteps.flatMap((step) => stepOf(step, facts, planned) ?? []);
}

function stepOf(step: PrepStepName, facts: PlanFacts, planned: Planned): PrepStep | undefined {
  const day = isNeeded(step, facts) ? facts.done?.[step] : undefined;
  if (day !== undefined) return { step, state: 'done', date: day, on: day };
  if (step === 'build') return { step, state: 'open', date: planned.build };
  // What was not there for a build that is over is not waited for.
  const open = facts.done?.build === undefined ? openStep(step, planned) : undefined;
  if (step === 'springtails') return tubStep(facts, open);
  return isGoods(step) ? (goodsStep(step, facts, planned) ?? open) : open;
}

function tubStep({ springtailDays, tub }: PlanFacts, open: PrepStep | undefined): PrepStep | undefined {
  if (springtailDays === undefined || !tub) return open;
  const its = tub.id === undefined ? {} : { tub: tub.id };
  const startedOn = tub.startedOn ?? (tub.claimed ? tub.readyOn : undefined);
  if (startedOn !== undefined) {
    return { step: 'springtails', state: 'done', date: startedOn, on: startedOn, ...its };
  }
  return open && { ...open, ...its };
}

function isNeeded(step: PrepStepName, { panel, leaves, springtailDays }: PlanFacts): boolean {
  if (step === 'panel') return panel;
  return step === 'leaves' ? leaves : step !== 'springtails' || springtailDays !== undefined;
}

function isGoods(step: PrepStepName): step is GoodsStep {
  return goodsSteps.some((each) => each === step);
}

/** Goods of which nothing is left to order; `undefined` while anything is. */
function goodsStep(step: GoodsStep, facts: PlanFacts, planned: Planned): PrepStep | undefined {
  const parts = facts.goods[step];
  if (step === 'tank' && parts.length === 0 && facts.clientTankIn !== undefined) {
    return { step, state: 'in', date: facts.clientTankIn, on: facts.clientTankIn };
  }
  const waited = parts.filter((part) => part.in === undefined);
  if (parts.length === 0 || waited.some(({ due }) => due === undefined)) return undefined;
  return waited.length > 0 ? orderedStep(step, waited, planned) : inStep(step, facts, planned);
}

function orderedStep(step: GoodsStep, waited: readonly GoodsPart[], planned: Planned): PrepStep {
  const { at } = planned;
  const due = waited.flatMap((part) => part.due ?? []).toSorted()[0] ?? at.on;
  const expected =
    waited
      .flatMap((part) => expectedOn(part, at) ?? [])
      .toSorted()
      .at(-1) ?? at.on;
  const overdue = due < at.on;
  return { step, state: 'ordered', date: toDoOf(step, planned) ?? expected, due, ...(overdue && { overdue }) };
}

function inStep(step: GoodsStep, facts: PlanFacts, planned: Planned): PrepStep {
  const parts = facts.goods[step];
  const on = lastOf(parts, (part) => part.in) ?? planned.at.on;
  const cleared = lastOf(parts, (part) => part.cleared ?? (part.in && addDays(part.in, facts.plantQuarantine)));
  const whole = { step, state: 'in', date: toDoOf(step, planned) ?? on, on } as const;
  return step === 'plants' && cleared !== undefined ? { ...whole, cleared } : whole;
}

function lastOf(parts: readonly GoodsPart[], dayOf: (part: GoodsPart) => Day | undefined): Day | undefined {
  return parts
    .flatMap((part) => dayOf(part) ?? [])
    .toSorted()
    .at(-1);
}

/** Leaves that are there are still to be treated. */
function toDoOf(step: GoodsStep, planned: Planned): Day | undefined {
  return step === 'leaves' ? openStep(step, planned)?.date : undefined;
}

/** Over all chains that reach a step: its date is when the last goods are in, its order day the earliest. */
function openStep(step: PrepStepName, { dated }: Planned): PrepStep | undefined {
  const dates = dated.flatMap(({ chain, days }) =>
    chain.links.flatMap(({ begins }, at) => (begins === step ? [days[at] ?? ''] : [])),
  );
  const orders = dated.flatMap(({ chain, days }) =>
    chain.is === 'to order' && chain.first === step ? [days[0] ?? ''] : [],
  );
  const date = dates.toSorted().at(-1);
  const orderBy = orders.toSorted()[0];
  return date === undefined ? undefined : { step, state: 'open', date, ...(orderBy !== undefined && { orderBy }) };
}
