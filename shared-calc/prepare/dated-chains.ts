import { addDays, type Day } from '#shared-calc/calendar/day.ts';
import { previousDeliveryDay } from '#shared-calc/calendar/delivery-day.ts';
import { previousInSeason } from '#shared-calc/calendar/season.ts';
import { shiftWorkdays } from '#shared-calc/calendar/shift-workdays.ts';
import { previousOpen, type WorkCalendar } from '#shared-calc/calendar/work-calendar.ts';
import type { ChainStep, ReadyDate } from '#shared-calc/trade/dates/ready-date.ts';
import type { Link, PrepChain } from './prep-chains.ts';

export interface DatedChain {
  readonly chain: PrepChain;
  /** The last day on which each link may begin, and the build at the end. */
  readonly days: readonly Day[];
  /** When it ends if it goes on as soon as it can. */
  readonly ready: Day;
}

interface Dates {
  readonly build: Day;
  readonly ready: ReadyDate;
  readonly calendar: WorkCalendar;
}

/** Each chain backward from the build. */
export function datedChains(chains: readonly PrepChain[], { build, ready, calendar }: Dates): readonly DatedChain[] {
  return chains.flatMap((chain, at) => {
    const days = chainBackward(build, chain.links, calendar);
    return days ? [{ chain, days, ready: ready.chains[at]?.ready ?? build }] : [];
  });
}

/** The last day of the first thing that is still to be done. */
export function firstDay({ chain: { links, is }, days }: DatedChain): Day {
  const at = is === 'to order' ? 0 : links.findIndex(({ begins }) => begins !== undefined);
  return days[Math.max(0, at)] ?? '';
}

/**
 * A chain of waits backward from the day they must end: the last day on which each may begin, and that day itself at
 * the end. A closed day, or one without a delivery, moves to an earlier one. `undefined` if the supplier never comes on
 * an open day.
 */
export function chainBackward(end: Day, links: readonly Link[], calendar: WorkCalendar): readonly Day[] | undefined {
  const found = [end];
  let at = end;
  for (const { wait } of links.toReversed()) {
    const before = stepBack(at, wait, calendar);
    if (before === undefined) return undefined;
    at = before;
    found.unshift(at);
  }
  return found;
}

function stepBack(day: Day, step: ChainStep, calendar: WorkCalendar): Day | undefined {
  switch (step.wait) {
    case 'workdays':
      return shiftWorkdays(day, -step.count, calendar);
    case 'days':
      return previousOpen(addDays(day, -step.count), calendar);
    case 'delivery':
      return previousDeliveryDay(day, step.weekdays, calendar);
    case 'open':
      return previousOpen(day, calendar);
    case 'season':
      return previousInSeason(day, step.season);
    case 'not before':
      return day;
  }
}
