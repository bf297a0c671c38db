import type { Day } from '#shared-calc/calendar/day.ts';
import type { PrepPlan } from './prep-plan.ts';
import { sayDate, sayDay, sayDays } from './say-day.ts';

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
};

/** What decides, in one sentence: "Order plants by Friday 26 February or the library opens late." `what` opens late. */
export function sayDecides({ decides, late }: PrepPlan, what: string): string {
  const act = decides.first === 'tank' && !decides.ordered ? "Have the client's tank here" : ordered[decides.first];
  return `${act} by ${sayDay(decides.by)} or ${what} opens ${late > 0 ? 'later still' : 'late'}.`;
}

/**
 * How late, why, and what moves: "8 days late because of plant quarantine: ..."; `undefined` if the handover is in
 * time.
 */
export function sayLate({ wanted, handover, late, because }: PrepPlan): string | undefined {
  if (wanted === undefined || late === 0) return undefined;
  const [from, to] = [wanted, handover].map((day) => (sameYear(wanted, handover) ? sayDay(day) : sayDate(day)));
  return `${sayDays(late)} late because of ${because}: the handover moves from ${from} to ${to}.`;
}

function sameYear(one: Day, other: Day): boolean {
  return one.slice(0, 4) === other.slice(0, 4);
}

/** All notes about a plan today, the most urgent first. */
export function sayPlan(plan: PrepPlan, what: string, on: Day): readonly string[] {
  const tank = plan.steps.find(({ step }) => step === 'tank');
  const late = sayLate(plan);
  return [
    ...(late === undefined ? [] : [late]),
    sayDecides(plan, what),
    ...(plan.onClosedDay ? [`${sayDay(plan.handover)}, the handover, is a closed day: who hands over?`] : []),
    ...(plan.clientTank && tank ? [`The tank comes from the client: it must be here by ${sayDay(tank.date)}.`] : []),
    ...gone(plan, on),
  ];
}

/** Days to order that have passed. With a deposit in, the goods may already be on order. */
function gone({ steps, hardscape }: PrepPlan, on: Day): readonly string[] {
  return [...steps, ...(hardscape ? [hardscape] : [])]
    .filter(({ orderBy }) => orderBy !== undefined && orderBy < on)
    .map(({ step, orderBy = on }) => `Ordered? The last day to order ${step} was ${sayDay(orderBy)}.`);
}
