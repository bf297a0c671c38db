import { addDays, type Day } from '#shared-calc/calendar/day.ts';
import { nextOpen, type WorkCalendar } from '#shared-calc/calendar/work-calendar.ts';
import { countDown } from '#shared-calc/trade/count-up.ts';

export interface CareDate {
  readonly act: string;
  readonly date: Day;
}

const visits: readonly (readonly [days: number, act: string])[] = [
  [7, 'call'],
  [28, 'visit'],
  [91, 'quarterly visit'],
  [182, 'quarterly visit'],
  [273, 'quarterly visit'],
  [365, 'yearly visit'],
];

/** The six dates of the first year, calendar days after the handover, each moved to the next open day. */
export function careDates(handover: Day, calendar: WorkCalendar): readonly CareDate[] {
  return visits.map(([days, act]) => ({ act, date: nextOpen(addDays(handover, days), calendar) }));
}

/** An act that whoever keeps the tank repeats. */
export interface CareRound {
  readonly act: 'drain' | 'refill and clean' | 'look at the leaves' | 'top up leaves';
  readonly everyDays: number;
  /** Done once, after that many days. */
  readonly once?: true;
  /** "every 6 weeks", "every 10 days", "once after 11 weeks" */
  readonly says: string;
  readonly first: Day;
}

/** Days from the bench; a drain time of 3650 d or more means "does not fill". */
export interface CareFigures {
  /** The soonest that the drainage may be full. */
  readonly drainDays?: number;
  readonly refillDays?: number;
  /** Until the litter has thinned, likely and at the soonest. */
  readonly litterDays?: number;
  readonly litterSoonest?: number;
}

const NEVER_FILLS = 3650;
const TWO_WEEKS = 14;
const WEEK = 7;

/** What is repeated after the handover; left out if nothing collects, nothing is misted, or no leaves are laid. */
export function careRounds(handover: Day, figures: CareFigures): readonly CareRound[] {
  const { drainDays, refillDays } = figures;
  const rounds: CareRound[] = [];
  if (drainDays !== undefined && drainDays < NEVER_FILLS) rounds.push(roundOf('drain', drainDays, handover));
  if (refillDays !== undefined) rounds.push(roundOf('refill and clean', refillDays, handover));
  return [...rounds, ...litterRounds(handover, figures)];
}

function roundOf(act: CareRound['act'], days: number, handover: Day): CareRound {
  const everyDays = act === 'drain' ? drainEvery(days) : Math.max(1, countDown(days));
  return { act, everyDays, says: sayEvery(everyDays), first: addDays(handover, everyDays) };
}

/** A first look when the litter may be thin, then topping up as it is likely to thin; whole weeks, rounded down. */
function litterRounds(handover: Day, { litterDays, litterSoonest }: CareFigures): readonly CareRound[] {
  if (litterDays === undefined) return [];
  const [every, look] = [wholeWeeks(litterDays), wholeWeeks(litterSoonest ?? litterDays)];
  const round = {
    act: 'top up leaves',
    everyDays: every,
    says: sayEvery(every),
    first: addDays(handover, every),
  } as const;
  if (look >= every) return [round];
  const says = `once after ${look / WEEK} weeks`;
  return [{ act: 'look at the leaves', everyDays: look, once: true, says, first: addDays(handover, look) }, round];
}

function wholeWeeks(days: number): number {
  return Math.max(1, countDown(days / WEEK)) * WEEK;
}

/** Whole weeks rounded down; whole days if under two weeks, and never less than one. */
export function drainEvery(days: number): number {
  return days < TWO_WEEKS ? Math.max(1, countDown(days)) : countDown(days / WEEK) * WEEK;
}

function sayEvery(days: number): string {
  if (days === 1) return 'every day';
  if (days === WEEK) return 'every week';
  return days > TWO_WEEKS && days % WEEK === 0 ? `every ${days / WEEK} weeks` : `every ${days} days`;
}

const LAMP_YEARS = [3, 4] as const;
const YEAR = 365;

/** From when to when the lamps are due: 3 to 4 years after the handover, of 365 d, on open days. */
export function lampDue(handover: Day, calendar: WorkCalendar): { readonly from: Day; readonly to: Day } {
  const [from, to] = LAMP_YEARS.map((years) => nextOpen(addDays(handover, years * YEAR), calendar));
  return { from: from ?? handover, to: to ?? handover };
}
