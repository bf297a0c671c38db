import { addDays, daysBetween, weekdayOf, type Day } from '#shared-calc/calendar/day.ts';
import { isOpen, type WorkCalendar } from '#shared-calc/calendar/work-calendar.ts';

export interface TimeScale {
  readonly from: Day;
  readonly to: Day;
  readonly pxADay: number;
  /** The middle of a day, px from the left of the days. */
  readonly at: (day: Day) => number;
}

/** Least width of a day, px: wide enough to tell days apart. */
const LEAST_PX = 3;
const MOST_PX = 26;
const AIR = 3;

/** A scale over some days, with margins at both ends, fitted to the available width. */
export function timeScale(days: readonly Day[], room: number): TimeScale | undefined {
  const inOrder = days.toSorted();
  const [first, last] = [inOrder[0], inOrder.at(-1)];
  if (first === undefined || last === undefined) return undefined;
  const from = addDays(first, -AIR);
  const to = addDays(last, AIR);
  const count = daysBetween(from, to) + 1;
  const pxADay = Math.min(MOST_PX, Math.max(LEAST_PX, room / count));
  return { from, to, pxADay, at: (day) => (daysBetween(from, day) + 0.5) * pxADay };
}

function daysOf({ from, to }: TimeScale): readonly Day[] {
  return Array.from({ length: daysBetween(from, to) + 1 }, (_, at) => addDays(from, at));
}

const WEEK_PX = 46;

/** The Mondays that are named: every one, every second, or every n-th, so that their names do not overlap. */
export function namedWeeks(scale: TimeScale): readonly Day[] {
  const every = Math.max(1, Math.ceil(WEEK_PX / (7 * scale.pxADay)));
  return daysOf(scale)
    .filter((day) => weekdayOf(day) === 1)
    .filter((_, at) => at % every === 0);
}

/** Closed days; consecutive ones are one stretch. */
export function shutStretches(
  scale: TimeScale,
  calendar: WorkCalendar,
): readonly { readonly from: Day; readonly days: number }[] {
  const stretches: { from: Day; days: number }[] = [];
  let last: Day | undefined;
  for (const day of daysOf(scale)) {
    if (isOpen(day, calendar)) continue;
    const before = stretches.at(-1);
    if (before && last !== undefined && daysBetween(last, day) === 1) before.days += 1;
    else stretches.push({ from: day, days: 1 });
    last = day;
  }
  return stretches;
}
