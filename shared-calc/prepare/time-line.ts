import { byDay, addDays, type Day } from '#shared-calc/calendar/day.ts';
import { isOpen, nextOpen, type WorkCalendar } from '#shared-calc/calendar/work-calendar.ts';
import type { PrepPlan } from './prep-plan.ts';
import type { TimedStep } from './step-minutes.ts';

/** A job with its dates, and the attended minutes of its steps. */
export interface PlannedJob {
  readonly job: string;
  readonly title: string;
  readonly plan: Pick<PrepPlan, 'steps' | 'handover' | 'handedOverOn'>;
  readonly minutes: ReadonlyMap<TimedStep, number>;
}

export interface TimeLineEntry {
  readonly date: Day;
  readonly job: string;
  readonly title: string;
  readonly step: TimedStep;
  /** Attended on this day; 0 for goods that only arrive. */
  readonly minutes: number;
  /** It is on a closed day: a handover wanted then. */
  readonly closed: boolean;
}

/** A day with more work than one builder has hours. */
export interface Clash {
  readonly date: Day;
  readonly minutes: number;
  readonly overMinutes: number;
  readonly entries: readonly TimeLineEntry[];
}

export interface TimeLine {
  /** By date, then in the order of the jobs. */
  readonly entries: readonly TimeLineEntry[];
  readonly clashes: readonly Clash[];
}

export interface TimeLineTerms {
  readonly calendar: WorkCalendar;
  /** Working hours of one builder. */
  readonly hoursADay: number;
}

/**
 * All jobs on one time line. A step of more than a day continues on the next open days; days on which all steps
 * together take more than one builder's hours are clashes.
 */
export function timeLine(jobs: readonly PlannedJob[], terms: TimeLineTerms): TimeLine {
  const entries = jobs
    .flatMap((job) => stepsOf(job).flatMap(({ step, date }) => overDays(job, { step, date }, terms)))
    .toSorted(byDay(({ date }) => date));
  const clashes = [...Map.groupBy(entries, ({ date }) => date)].flatMap(([date, day]) => clashOf(date, day, terms));
  return { entries, clashes };
}

interface DatedStep {
  readonly step: TimedStep;
  readonly date: Day;
}

/** What is over takes nobody's hours any more. */
function stepsOf({ plan: { steps, handover, handedOverOn } }: PlannedJob): readonly DatedStep[] {
  const open = steps.filter(({ state }) => state !== 'done' && state !== 'in');
  return handedOverOn === undefined ? [...open, { step: 'handover', date: handover }] : open;
}

function overDays(
  { job, title, minutes }: PlannedJob,
  { step, date }: DatedStep,
  { calendar, hoursADay }: TimeLineTerms,
): readonly TimeLineEntry[] {
  const aDay = hoursADay > 0 ? hoursADay * 60 : Infinity;
  const entries: TimeLineEntry[] = [];
  let at = date;
  let left = minutes.get(step) ?? 0;
  do {
    const today = Math.min(left, aDay);
    entries.push({ date: at, job, title, step, minutes: today, closed: !isOpen(at, calendar) });
    left -= today;
    at = nextOpen(addDays(at, 1), calendar);
  } while (left > 1e-9);
  return entries;
}

function clashOf(date: Day, day: readonly TimeLineEntry[], { hoursADay }: TimeLineTerms): readonly Clash[] {
  const entries = day.filter((entry) => entry.minutes > 0);
  const minutes = entries.reduce((sum, entry) => sum + entry.minutes, 0);
  const overMinutes = minutes - hoursADay * 60;
  return overMinutes > 1e-9 ? [{ date, minutes, overMinutes, entries }] : [];
}
