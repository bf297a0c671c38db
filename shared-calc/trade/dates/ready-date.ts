import { addDays, type Day } from '#shared-calc/calendar/day.ts';
import { nextDeliveryDay } from '#shared-calc/calendar/delivery-day.ts';
import { nextInSeason, type Season } from '#shared-calc/calendar/season.ts';
import { shiftWorkdays } from '#shared-calc/calendar/shift-workdays.ts';
import { nextOpen, type WorkCalendar } from '#shared-calc/calendar/work-calendar.ts';
import type { Refusal } from '#shared-calc/trade/first-refusal.ts';
import { belowZero } from '#shared-calc/trade/refuse-figure.ts';
import { neverOpen, noDay, noDayCount } from './refuse-date.ts';
import { listFunction, refused } from '#shared-calc/trade/trade-function.ts';

/**
 * One wait: working days of a lead, calendar days of a cure or quarantine, the next delivery day, the next open day, the
 * next day in a season, a day before which it does not begin.
 */
export type ChainStep =
  | { readonly wait: 'workdays'; readonly count: number }
  | { readonly wait: 'days'; readonly count: number }
  | { readonly wait: 'delivery'; readonly weekdays: readonly number[] }
  | { readonly wait: 'open' }
  | { readonly wait: 'season'; readonly season: Season }
  | { readonly wait: 'not before'; readonly day: Day };

export interface Chain {
  readonly name: string;
  /** If left out, the start of all. */
  readonly from?: Day;
  readonly steps: readonly ChainStep[];
}

export interface ChainDates {
  readonly name: string;
  /** The day after each step. */
  readonly steps: readonly Day[];
  readonly ready: Day;
}

export interface ReadyDate {
  readonly date: Day;
  /** The chain that is ready last; the first of equal ones. */
  readonly decides: string;
  readonly chains: readonly ChainDates[];
}

/** When everything is ready, and the chain that decides. Each chain runs from its start, one step after the other. */
export function readyDate(start: Day, chains: readonly Chain[], calendar: WorkCalendar): ReadyDate | Refusal {
  const wrong = noDay(start) ?? neverOpen(calendar);
  if (wrong) return wrong;
  const dated: ChainDates[] = [];
  for (const chain of chains) {
    const run = runChain(chain.from ?? start, chain, calendar);
    if ('refused' in run) return run;
    dated.push(run);
  }
  const last = dated.reduce<ChainDates | undefined>(
    (late, each) => (late && late.ready >= each.ready ? late : each),
    undefined,
  );
  return last
    ? { date: last.ready, decides: last.name, chains: dated }
    : refused('Nothing to wait for; give at least one chain.');
}

function runChain(start: Day, { name, steps }: Chain, calendar: WorkCalendar): ChainDates | Refusal {
  const days: Day[] = [];
  let at = start;
  for (const step of steps) {
    const next = takeStep(at, step, calendar);
    if (next === undefined) return refused(`${name}: no delivery day is a day that is open.`);
    if (typeof next !== 'string') return refused(`${name}: ${next.refused}`);
    at = next;
    days.push(at);
  }
  return { name, steps: days, ready: at };
}

function takeStep(day: Day, step: ChainStep, calendar: WorkCalendar): Day | Refusal | undefined {
  switch (step.wait) {
    case 'workdays':
      return noWait(step.count) ?? shiftWorkdays(day, step.count, calendar);
    case 'days':
      return noWait(step.count) ?? addDays(day, step.count);
    case 'delivery':
      return nextDeliveryDay(day, step.weekdays, calendar);
    case 'open':
      return nextOpen(day, calendar);
    case 'season':
      return nextInSeason(day, step.season);
    case 'not before':
      return day < step.day ? step.day : day;
  }
}

function noWait(count: number): Refusal | undefined {
  return belowZero({ 'A wait': count }) ?? noDayCount('A wait', count);
}

export const readyDateEntry = listFunction({
  name: 'READY_DATE',
  title: 'Ready date',
  group: 'dates',
  takes: 'start, chains of waits: working days, calendar days, delivery weekdays',
  gives: 'day, and the chain that decides',
  sum: 'each chain from the start, step after step; the latest decides',
  help: 'Leads are working days; cure, quarantine and culture are calendar days.',
  examples: [
    {
      rule: 'from 19 Jul 2027, closed 2-6 Aug and 30 Aug: panel 10 + 1 working days + 7 d; plants 4 working days, Tue-Thu, 30 d; cultures 28 d',
      gives: '26 Aug 2027, plants decide',
    },
    { rule: 'from 8 Mar 2027: plants 4 working days, Tue-Thu, 30 d', gives: '15 Apr 2027, plants decide' },
  ],
  source: 'calendar',
});
