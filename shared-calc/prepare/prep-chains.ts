import type { Day } from '#shared-calc/calendar/day.ts';
import { nextDeliveryDay } from '#shared-calc/calendar/delivery-day.ts';
import { nextOpen, type WorkCalendar } from '#shared-calc/calendar/work-calendar.ts';
import type { ChainStep } from '#shared-calc/trade/dates/ready-date.ts';
import type { PlanFacts } from './plan-facts.ts';
import type { GoodsPart } from './planned-goods.ts';
import type { GoodsStep, PrepStepName } from './prep-steps.ts';

/** A wait, and the step that is done on the day it begins: goods are in on the delivery day itself. */
export interface Link {
  readonly wait: ChainStep;
  readonly begins?: PrepStepName;
}

/** A chain of waits that must end before the build. */
export interface PrepChain {
  /** Its words if this chain decides: "plant quarantine". */
  readonly because: string;
  /** The first thing of it that is still to be done, or that is waited for. */
  readonly first: PrepStepName;
  readonly is: 'to order' | 'to do' | 'waiting';
  /** The day of its last fact, from which it runs; left out: the start of the plan. */
  readonly from?: Day;
  readonly links: readonly Link[];
}

/** The days from which a plan is worked. */
export interface PlanDays {
  /** Today. */
  readonly on: Day;
  /** The first open day on which anything can be begun. */
  readonly start: Day;
  readonly calendar: WorkCalendar;
}

function workdays(count: number, begins?: PrepStepName): Link {
  return link({ wait: 'workdays', count }, begins);
}

function days(count: number, begins?: PrepStepName): Link {
  return link({ wait: 'days', count }, begins);
}

function link(wait: ChainStep, begins?: PrepStepName): Link {
  return { wait, ...(begins && { begins }) };
}

const open = link({ wait: 'open' });

/** An open step has no past: a wait that begins with it begins on the start of the plan or later. */
function notBefore(day: Day): readonly Link[] {
  return [link({ wait: 'not before', day }), open];
}

/** Whole working days by which goods are in before the build. */
const MEDIA_BEFORE = 2;
const OTHERS_BEFORE = 1;

/**
 * The chains of an order, each from its last fact. Goods are in 1 working day before the build, media 2 (the mix rests
 * a day); the tank, and wood and cork, 1 before the background is glued. Leaves come from stock and are treated 1
 * before the build.
 */
export function prepChains(facts: PlanFacts, at: PlanDays): readonly PrepChain[] {
  const { goods } = facts;
  return [
    ...tankChains(facts, at),
    ...goods.plants.map((part) => plantChain(facts, part, at)),
    ...springtailChains(facts),
    ...goodsChains('media', goods.media, { because: 'media delivery', after: [workdays(MEDIA_BEFORE)] }, at),
    ...goodsChains('panes', goods.panes, { because: 'cut panes', after: [workdays(OTHERS_BEFORE)] }, at),
    ...goodsChains('lamps', goods.lamps, { because: 'lamp delivery', after: [workdays(OTHERS_BEFORE)] }, at),
    ...hardscapeChains(facts, at),
    ...leafChains(facts, at),
  ];
}

interface Ending {
  readonly because: string;
  /** Waits from the day the goods are in. */
  readonly after: readonly Link[];
}

function goodsChains(step: GoodsStep, parts: readonly GoodsPart[], end: Ending, at: PlanDays): readonly PrepChain[] {
  return parts.map((part) => goodsChain(step, part, end, at));
}

/** Goods to order: their lead, their season, their delivery day, and the waits after it; else from the day they come. */
function goodsChain(step: GoodsStep, part: GoodsPart, { because, after }: Ending, at: PlanDays): PrepChain {
  const from = part.in ?? expectedOn(part, at);
  if (from === undefined) return { because, first: step, is: 'to order', links: [...orderLinks(step, part), ...after] };
  const toDo = after.find(({ begins }) => begins)?.begins;
  return { because, first: toDo ?? step, is: toDo ? 'to do' : 'waiting', from, links: after };
}

function orderLinks(step: GoodsStep, { leadDays, weekdays, season }: GoodsPart): readonly Link[] {
  return [
    workdays(leadDays),
    ...(season ? [link({ wait: 'season', season })] : []),
    link({ wait: 'delivery', weekdays }, step === 'leaves' ? undefined : step),
  ];
}

/** When ordered goods come: the day promised, or from then on any day on which their supplier comes. */
export function expectedOn({ due, weekdays }: GoodsPart, { on, calendar }: Omit<PlanDays, 'start'>): Day | undefined {
  if (due === undefined || due >= on) return due;
  return nextDeliveryDay(on, weekdays, calendar) ?? nextOpen(on, calendar);
}

function gluing({ panelCure }: PlanFacts, { start }: PlanDays): readonly Link[] {
  return [workdays(OTHERS_BEFORE), ...notBefore(start), days(panelCure, 'panel'), open];
}

function tankChains(facts: PlanFacts, at: PlanDays): readonly PrepChain[] {
  const { panel, done = {}, clientTank, clientTankIn } = facts;
  const isGluedLater = panel && done.panel === undefined;
  const after = isGluedLater ? gluing(facts, at) : [workdays(OTHERS_BEFORE)];
  const cured = panel ? ' and background cure' : '';
  const because = clientTank && facts.goods.tank.length === 0 ? "client's tank" : 'tank delivery';
  const chains = goodsChains('tank', facts.goods.tank, { because: `tank delivery${cured}`, after }, at);
  return [
    ...gluedChains(facts, `${because}${cured}`),
    ...chains,
    ...(clientTank ? [broughtChain(`client's tank${cured}`, after, clientTankIn)] : []),
  ];
}

function gluedChains({ panel, panelCure, done = {} }: PlanFacts, because: string): readonly PrepChain[] {
  if (!panel || done.panel === undefined) return [];
  return [{ because, first: 'panel', is: 'waiting', from: done.panel, links: [days(panelCure), open] }];
}

/** A tank that its client brings. */
function broughtChain(because: string, after: readonly Link[], from: Day | undefined): PrepChain {
  const [first, ...rest] = after;
  if (from !== undefined) return { because, first: 'tank', is: 'waiting', from, links: after };
  return { because, first: 'tank', is: 'to do', links: first ? [{ ...first, begins: 'tank' }, ...rest] : [] };
}

function hardscapeChains(facts: PlanFacts, at: PlanDays): readonly PrepChain[] {
  const isGluedLater = facts.panel && facts.done?.panel === undefined;
  const end = isGluedLater
    ? { because: 'wood and cork delivery and background cure', after: gluing(facts, at) }
    : { because: 'wood and cork delivery', after: [workdays(OTHERS_BEFORE)] };
  return goodsChains('hardscape', facts.goods.hardscape, end, at);
}

function plantChain({ plantQuarantine }: PlanFacts, part: GoodsPart, at: PlanDays): PrepChain {
  const because = plantQuarantine > 0 ? 'plant quarantine' : 'plant delivery';
  if (part.in !== undefined && part.cleared !== undefined) {
    return { because, first: 'plants', is: 'waiting', from: part.cleared, links: [open] };
  }
  return goodsChain('plants', part, { because, after: [days(plantQuarantine), open] }, at);
}

function springtailChains(facts: PlanFacts): readonly PrepChain[] {
  const { springtailDays, tub } = facts;
  if (springtailDays === undefined) return [];
  const chain = { because: 'springtail culture', first: 'springtails' } as const;
  const waited = tubWait(facts, springtailDays);
  if (waited) return [{ ...chain, is: 'waiting', ...waited }];
  const wait = tub?.readyOn === undefined ? days(springtailDays) : link({ wait: 'not before', day: tub.readyOn });
  return [{ ...chain, is: 'to do', links: [{ ...wait, begins: 'springtails' }, open] }];
}

/** The wait for springtails that are there, or that grow in the tub of the order. */
function tubWait({ tub = {}, done = {} }: PlanFacts, grown: number): Pick<PrepChain, 'from' | 'links'> | undefined {
  if (done.springtails !== undefined) return { from: done.springtails, links: [open] };
  if (tub.claimed && tub.readyOn !== undefined) return { from: tub.readyOn, links: [open] };
  return tub.startedOn === undefined ? undefined : { from: tub.startedOn, links: [days(grown), open] };
}

function leafChains(facts: PlanFacts, at: PlanDays): readonly PrepChain[] {
  const { leaves, goods, done = {} } = facts;
  if (!leaves) return [];
  const because = 'leaf treatment';
  const treated = workdays(OTHERS_BEFORE, 'leaves');
  if (done.leaves !== undefined) {
    return [{ because, first: 'leaves', is: 'waiting', from: done.leaves, links: [workdays(OTHERS_BEFORE)] }];
  }
  if (goods.leaves.length === 0) return [{ because, first: 'leaves', is: 'to do', links: [treated] }];
  return goods.leaves.map((part) => {
    const isToOrder = part.in === undefined && part.due === undefined;
    const season = isToOrder && part.season ? 'leaf season' : 'leaf delivery';
    const end = { because: part.in === undefined ? season : because, after: [...notBefore(at.start), treated] };
    return goodsChain('leaves', part, isToOrder ? { ...end, after: [treated] } : end, at);
  });
}
