import type { Day } from '#shared-calc/calendar/day.ts';
import type { PrepPlan } from './prep-plan.ts';
import { goodsSteps, type GoodsStep } from './prep-steps.ts';
import { sayDate, sayDay, sayDays, type SaidDays } from './say-day.ts';

const ordered: Readonly<Record<PrepPlan['decides']['first'], string>> = {
  tank: 'Order the tank',
  panel: 'Glue the background',
  plants: 'Order plants',
  springtails: 'Start the springtails',
  media: 'Order media',
  panes: 'Order the panes',
  lamps: 'Order lamps and misting',
  leaves: 'Treat the leaves',
  hardscape: 'Order wood, cork and sealant',
  build: 'Build',
  handover: 'Hand over',
};

/** What a plan is said of, the tank or the job that opens late, and how its days are said. */
export interface PlanWords {
  readonly what: string;
  readonly days: SaidDays;
}

/** What a plan is said of, the tank or the job that opens late, and how its days are said. */
export interface PlanWords {
  readonly what: string;
  readonly days: SaidDays;
}

/**
 * What decides, in one sentence: "Order plants by Friday 26 February or the library opens late.", "It waits for plant
 * quarantine until Thursday 1 April."
 */
export function sayDecides({ decides: { first, is, by }, because, late }: PrepPlan, { what, days }: PlanWords): string {
  if (is === 'waiting') return `It waits for ${because} until ${sayDay(by, days)}.`;
  return `${firstAct(first, is)} by ${sayDay(by, days)} or ${what} opens ${late > 0 ? 'later still' : 'late'}.`;
}

function firstAct(first: PrepPlan['decides']['first'], is: PrepPlan['decides']['is']): string {
  if (first === 'tank' && is === 'to do') return "Have the client's tank here";
  return first === 'leaves' && is === 'to order' ? 'Order the leaves' : ordered[first];
}

/**
 * How late, why, and what moves: "8 days late because of plant quarantine: ..."; `undefined` if the handover is in
 * time.
 */
export function sayLate({ wanted, handover, late, because }: PrepPlan, days: SaidDays): string | undefined {
  if (wanted === undefined || late === 0) return undefined;
  const [from, to] = [wanted, handover].map((day) => (sameYear(wanted, handover) ? sayDay : sayDate)(day, days));
  return `${sayDays(late)} late because of ${because}: the handover moves from ${from} to ${to}.`;
}

function sameYear(one: Day, other: Day): boolean {
  return one.slice(0, 4) === other.slice(0, 4);
}

/** All notes about a plan, the most urgent first. */
export function sayPlan(plan: PrepPlan, words: PlanWords): readonly string[] {
  const { days } = words;
  if (plan.handedOverOn !== undefined) return [`Handed over on ${sayDate(plan.handedOverOn, days)}.`];
  const tank = plan.steps.find(({ step }) => step === 'tank');
  const late = sayLate(plan, days);
  return [
    ...(late === undefined ? [] : [late]),
    ...overdue(plan, days),
    sayDecides(plan, words),
    ...(plan.onClosedDay ? [`${sayDay(plan.handover, days)}, the handover, is a closed day: who hands over?`] : []),
    ...(plan.clientTank && tank?.state === 'open'
      ? [`The tank comes from the client: it must be here by ${sayDay(tank.date, days)}.`]
      : []),
  ];
}

const goods: Readonly<Record<GoodsStep, string>> = {
  tank: 'The tank',
  plants: 'Plants',
  media: 'Media',
  panes: 'The panes',
  lamps: 'Lamps and misting',
  leaves: 'Leaves',
  hardscape: 'Wood, cork and sealant',
};

/** Goods whose day is past and that are not in. */
function overdue({ steps }: PrepPlan, days: SaidDays): readonly string[] {
  return goodsSteps.flatMap((name) => {
    const late = steps.find((each) => each.step === name && each.overdue);
    if (!late?.due) return [];
    return [
      `${goods[name]}: due on ${sayDay(late.due, days)} and not in; ask. Reckoned with for ${sayDay(late.date, days)}.`,
    ];
  });
}
