import { addDays, daysBetween, weekdayOf, type Day } from '#shared-calc/calendar/day.ts';
import type { Derived } from '#shared-calc/derive/derived.ts';
import { isUnderWay } from '#shared-calc/derive/planned-jobs.ts';
import type { TodayItem, TodaySource } from '#shared-calc/derive/today-item.ts';
import { jobName, jobsInOrder } from '#shared-calc/jobs/find-job.ts';
import { sayDays, sayPlainDate, type SaidDays } from '#shared-calc/prepare/say-day.ts';
import type { PrepPlan } from '#shared-calc/prepare/prep-plan.ts';
import type { Job } from '#shared-calc/records/records.ts';
import { SIX_WEEKS } from './day-sections.ts';

/** Something on a day, with its word. Days are counted from the first Monday. */
export interface WeekMark {
  readonly key: string;
  readonly at: number;
  readonly word: string;
  readonly form: 'mark' | 'build' | 'handover';
  readonly late: boolean;
  /** Its word stands before it, for want of room behind. */
  readonly isBack: boolean;
}

export interface WeekBand {
  readonly key: string;
  readonly name: string;
  /** `3 days late, handover 22 April 2027`, or the state of a job without a plan. */
  readonly says: string;
  readonly isLate: boolean;
  /** Goods, then work; each as rows in which no two words meet. */
  readonly lanes: readonly (readonly (readonly WeekMark[])[])[];
  /** From the build to the handover, if any of it is within the weeks. */
  readonly settle: { readonly from: number; readonly to: number } | undefined;
}

/** The Monday with which the six weeks begin. */
export function firstMonday(today: Day): Day {
  return addDays(today, 1 - weekdayOf(today));
}

const goods: readonly TodaySource[] = ['goods', 'orders', 'quarantine'];

/** The next six weeks of each job with something to do in them. */
export function weekBands(items: readonly TodayItem[], derived: Derived): readonly WeekBand[] {
  const byJob = Map.groupBy(items, ({ job }) => job);
  return jobsInOrder(derived.records).flatMap((job) => bandOf(job, byJob.get(job.id) ?? [], derived) ?? []);
}

function bandOf(job: Job, items: readonly TodayItem[], derived: Derived): WeekBand | undefined {
  const monday = firstMonday(derived.today);
  const near = items.filter(({ day }) => daysBetween(monday, day) < SIX_WEEKS);
  if (near.length === 0) return undefined;
  const plan = isUnderWay(job) ? planOf(job, derived) : undefined;
  const marks = (isGoods: boolean) =>
    near
      .filter(({ source }) => goods.includes(source) === isGoods)
      .map((item) => markOf(item, { monday, today: derived.today }));
  return {
    key: job.id,
    name: jobName(job),
    says: plan ? planWords(plan, derived.display) : job.state,
    isLate: plan !== undefined && plan.late > 0,
    lanes: [inRows(marks(true)), inRows(marks(false))],
    settle: plan && settleOf(plan, monday),
  };
}

function planOf({ id }: Job, derived: Derived): PrepPlan | undefined {
  const plan = derived.job(id)?.plan();
  return plan?.ok ? plan.value.plan : undefined;
}

function planWords({ late, handover }: PrepPlan, days: SaidDays): string {
  const words = `handover ${sayPlainDate(handover, days)}`;
  return late > 0 ? `${sayDays(late)} late, ${words}` : words;
}

function settleOf({ build, handover }: PrepPlan, monday: Day): WeekBand['settle'] {
  const [from, to] = [daysBetween(monday, build), daysBetween(monday, handover)];
  return from >= SIX_WEEKS || to <= 0 ? undefined : { from: Math.max(0, from), to: Math.min(SIX_WEEKS, to) };
}

interface Days {
  readonly monday: Day;
  readonly today: Day;
}

/** What is overdue stands on today. */
function markOf({ key, day, what, late }: TodayItem, { monday, today }: Days): WeekMark {
  const at = daysBetween(monday, late > 0 ? today : day);
  const form = what === 'build' ? 'build' : what === 'hand over' ? 'handover' : 'mark';
  return {
    key,
    at,
    word: what,
    form,
    late: late > 0,
    isBack: at + roomOf(what) > SIX_WEEKS && at + 1 > SIX_WEEKS - at,
  };
}

/** Days that a letter takes, and a mark, in the narrowest panel. */
const LETTER = 0.85;
const DOT = 2.5;

function roomOf(word: string): number {
  return DOT + word.length * LETTER;
}

/** Each mark in the first row in which its word meets no other. */
function inRows(marks: readonly WeekMark[]): readonly (readonly WeekMark[])[] {
  const rows: { readonly marks: WeekMark[]; readonly taken: (readonly [from: number, to: number])[] }[] = [];
  for (const mark of marks) {
    const room = roomOf(mark.word);
    const [from, to] = mark.isBack ? [mark.at + 1 - room, mark.at + 1] : [mark.at, mark.at + room];
    const free = rows.find(({ taken }) => taken.every(([start, end]) => to <= start || end <= from));
    const row = free ?? { marks: [], taken: [] };
    if (!free) rows.push(row);
    row.marks.push(mark);
    row.taken.push([from, to]);
  }
  return rows.map((row) => row.marks);
}
