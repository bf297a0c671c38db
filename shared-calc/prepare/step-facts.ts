import type { Day } from '#shared-calc/calendar/day.ts';
import type { PlanFacts } from './plan-facts.ts';
import { goodsSteps, prepSteps, type GoodsStep } from './prep-steps.ts';

/** What can be told of a step: goods are due and come in, plants are cleared, a tub is started, the rest is done. */
export const factWhats = ['in', 'due', 'done', 'started', 'cleared'] as const;
export type FactWhat = (typeof factWhats)[number];

export const factSteps = [...prepSteps, 'watch', 'handover'] as const;
export type FactStep = (typeof factSteps)[number];

export interface StepFact {
  readonly step: FactStep;
  readonly what: FactWhat;
  readonly on: Day;
}

/** What can be told of a step. */
export function whatsOf(step: FactStep): readonly FactWhat[] {
  if (step === 'springtails') return ['started', 'done', 'in'];
  if (step === 'plants') return ['due', 'in', 'done', 'cleared'];
  return isGoods(step) ? ['due', 'in', 'done'] : ['done'];
}

function isGoods(step: FactStep): step is GoodsStep {
  return goodsSteps.some((each) => each === step);
}

/** The input of a plan with what has happened of its steps. Of two facts of a kind the later stands. */
export function withFacts(facts: PlanFacts, told: readonly StepFact[]): PlanFacts {
  return told.reduce(withFact, facts);
}

function withFact(facts: PlanFacts, { step, what, on }: StepFact): PlanFacts {
  if (step === 'springtails' && what === 'started') return { ...facts, tub: { startedOn: on } };
  if (step === 'leaves' && what === 'done') return { ...facts, done: { ...facts.done, leaves: on } };
  if (step === 'tank' && what !== 'due') return { ...withGoods(facts, { step, what, on }), clientTankIn: on };
  if (isGoods(step)) return withGoods(facts, { step, what, on });
  return { ...facts, done: { ...facts.done, [step]: on } };
}

function withGoods(
  facts: PlanFacts,
  { step, what, on }: { readonly step: GoodsStep; readonly what: FactWhat; readonly on: Day },
): PlanFacts {
  const key = what === 'done' || what === 'started' ? 'in' : what;
  const parts = facts.goods[step].map((part) => ({ ...part, [key]: on }));
  return { ...facts, goods: { ...facts.goods, [step]: parts } };
}
