import type { ChainStep } from '#shared-calc/trade/dates/ready-date.ts';
import type { PlanFacts } from './plan-facts.ts';
import type { Delivery } from './planned-goods.ts';
import type { GoodsStep, PrepStepName } from './prep-steps.ts';

/** A chain of waits that must end before the build. */
export interface PrepChain {
  /** Its words if this chain decides: "plant quarantine". */
  readonly because: string;
  /** What must be done on its first day. */
  readonly first: PrepStepName | 'hardscape';
  /** Its first day is the day to order. */
  readonly ordered: boolean;
  readonly waits: readonly ChainStep[];
  /** Steps, by the index of the wait that begins on their day: goods are in on the delivery day itself. */
  readonly marks: readonly { readonly step: PrepStepName | 'hardscape'; readonly at: number }[];
}

const open: ChainStep = { wait: 'open' };

function workdays(count: number): ChainStep {
  return { wait: 'workdays', count };
}

function days(count: number): ChainStep {
  return { wait: 'days', count };
}

/** Whole working days by which goods are in before the build. */
const MEDIA_BEFORE = 2;
const OTHERS_BEFORE = 1;

/**
 * The chains of an order. Goods are in 1 working day before the build, media 2 (the mix rests a day); the tank, and
 * wood and cork, 1 before the background is glued. Leaves come from stock and are treated 1 before the build.
 */
export function prepChains(facts: PlanFacts): readonly PrepChain[] {
  return [
    ...tankChains(facts),
    ...ordered('plants', facts.goods.plants, {
      because: facts.plantQuarantine > 0 ? 'plant quarantine' : 'plant delivery',
      rest: [days(facts.plantQuarantine), open],
    }),
    ...springtailChains(facts),
    ...ordered('media', facts.goods.media, { because: 'media delivery', rest: [workdays(MEDIA_BEFORE)] }),
    ...ordered('panes', facts.goods.panes, { because: 'cut panes', rest: [workdays(OTHERS_BEFORE)] }),
    ...ordered('lamps', facts.goods.lamps, { because: 'lamp delivery', rest: [workdays(OTHERS_BEFORE)] }),
    ...hardscapeChains(facts),
    ...leafChains(facts),
  ];
}

interface Ending {
  readonly because: string;
  readonly rest: readonly ChainStep[];
  readonly marks?: PrepChain['marks'];
}

/** Ordered goods: their lead, their delivery day, and the waits after it. */
function ordered(step: GoodsStep, deliveries: readonly Delivery[], end: Ending): readonly PrepChain[] {
  return deliveries.map(({ leadDays, weekdays }) => ({
    because: end.because,
    first: step,
    ordered: true,
    waits: [workdays(leadDays), { wait: 'delivery', weekdays }, ...end.rest],
    marks: [{ step, at: 1 }, ...(end.marks ?? [])],
  }));
}

function glued({ panelCure }: PlanFacts): readonly ChainStep[] {
  return [workdays(OTHERS_BEFORE), days(panelCure), open];
}

function tankChains(facts: PlanFacts): readonly PrepChain[] {
  const rest = facts.panel ? glued(facts) : [workdays(OTHERS_BEFORE)];
  const panelAt = (at: number): PrepChain['marks'] => (facts.panel ? [{ step: 'panel', at }] : []);
  const because = facts.panel ? 'tank delivery and background cure' : 'tank delivery';
  const chains = ordered('tank', facts.goods.tank, { because, rest, marks: panelAt(3) });
  if (!facts.clientTank) return chains;
  const brought: PrepChain = {
    because: facts.panel ? "client's tank and background cure" : "client's tank",
    first: 'tank',
    ordered: false,
    waits: rest,
    marks: [{ step: 'tank', at: 0 }, ...panelAt(1)],
  };
  return [...chains, brought];
}

function hardscapeChains(facts: PlanFacts): readonly PrepChain[] {
  return ordered('hardscape', facts.goods.hardscape, {
    because: facts.panel ? 'wood and cork delivery and background cure' : 'wood and cork delivery',
    rest: facts.panel ? glued(facts) : [workdays(OTHERS_BEFORE)],
  });
}

function springtailChains({ springtailDays }: PlanFacts): readonly PrepChain[] {
  if (springtailDays === undefined) return [];
  const chain: PrepChain = {
    because: 'springtail culture',
    first: 'springtails',
    ordered: false,
    waits: [days(springtailDays), open],
    marks: [{ step: 'springtails', at: 0 }],
  };
  return [chain];
}

function leafChains({ leaves }: PlanFacts): readonly PrepChain[] {
  if (!leaves) return [];
  const chain: PrepChain = {
    because: 'leaf treatment',
    first: 'leaves',
    ordered: false,
    waits: [workdays(OTHERS_BEFORE)],
    marks: [{ step: 'leaves', at: 0 }],
  };
  return [chain];
}
