import type { Day } from '#shared-calc/calendar/day.ts';
import type { PrepPlan } from './prep-plan.ts';
import { sayDay } from './say-day.ts';

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

/** How late, why, and what moves: "8 days late because of plant quarantine: ..."; `undefined` where it is kept. */
export function sayLate({ wanted, handover, late, because }: PrepPlan): string | undefined {
  if (wanted === undefined || late === 0) return undefined;
  const days = late === 1 ? '1 day' : `${late} days`;
  return `${days} late because of ${because}: the handover moves from ${sayDay(wanted)} to ${sayDay(handover)}.`;
}

/** All that is worth saying about a plan today, the most pressing first. */
export function sayPlan(plan: PrepPlan, what: string, on: Day): readonly string[] {
  const tank = plan.steps.find(({ step }) => step === 'tank');
  const late = sayLate(plan);
  return [
    ...(late === undefined ? [] : [late]),
    sayDecides(plan, what),
    ...(plan.clientTank && tank ? [`The tank comes from the client: it must be here by ${sayDay(tank.date)}.`] : []),
    ...gone(plan, on),
  ];
}

/** With a deposit in, goods may be on order already; where they are not, these days are gone. */
function gone({ steps, hardscape }: PrepPlan, on: Day): readonly string[] {
  return [...steps, ...(hardscape ? [hardscape] : [])]
    .filter(({ orderBy }) => orderBy !== undefined && orderBy < on)
    .map(({ step, orderBy = on }) => `Ordered? The last day to order ${step} was ${sayDay(orderBy)}.`);
}
