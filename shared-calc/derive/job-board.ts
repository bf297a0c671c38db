import { addDays, type Day } from '#shared-calc/calendar/day.ts';
import { isGateOpen } from '#shared-calc/jobs/move-job.ts';
import { jobSummary } from '#shared-calc/jobs/job-summary.ts';
import { jobStates } from '#shared-calc/fields/job.ts';
import type { Job, Records } from '#shared-calc/records/records.ts';
import { jobsInOrder } from '#shared-calc/jobs/find-job.ts';
import { firstOfJobs, sayNext } from './today-next.ts';
import type { TodayItem } from './today-item.ts';

export interface BoardRow {
  readonly job: Job;
  readonly sizes: string;
  /** What is to be done first, or whom the job waits for. */
  readonly next: string;
  /** The day of it, if there is anything to do. */
  readonly on?: Day;
  /** It should have been done before today. */
  readonly late: boolean;
  /** The shopping run may include it. */
  readonly gateOpen: boolean;
}

export interface BoardGroup {
  readonly title: string;
  readonly rows: readonly BoardRow[];
}

/** Jobs, and everything that is to be done, in order of its days. */
export interface BoardFacts {
  readonly records: Pick<Records, 'job' | 'size'>;
  readonly today: Day;
  readonly items: readonly TodayItem[];
}

/** Jobs by their state, in the order of states; within a state by the day of what is next. */
export function boardByState(facts: BoardFacts): readonly BoardGroup[] {
  const rows = boardRows(facts);
  return jobStates
    .map((state) => ({ title: state, rows: rows.filter(({ job }) => job.state === state) }))
    .filter((group) => group.rows.length > 0);
}

const dayGroups = ['Late', 'Today', 'Within a week', 'Later', 'Nothing to do now', 'Closed'] as const;

/** Jobs by the day of what is next. */
export function boardByDay(facts: BoardFacts): readonly BoardGroup[] {
  const rows = boardRows(facts);
  return dayGroups
    .map((title) => ({ title, rows: rows.filter((row) => dayGroup(row, facts.today) === title) }))
    .filter((group) => group.rows.length > 0);
}

function dayGroup({ job: { state }, on, late }: BoardRow, today: Day): (typeof dayGroups)[number] {
  if (state === 'closed') return 'Closed';
  if (on === undefined) return 'Nothing to do now';
  if (late) return 'Late';
  if (on === today) return 'Today';
  return on <= addDays(today, 7) ? 'Within a week' : 'Later';
}

function boardRows({ records, items }: BoardFacts): readonly BoardRow[] {
  const first = firstOfJobs(items);
  return jobsInOrder(records)
    .map((job) => rowOf(job, first.get(job.id), records))
    .toSorted((one, other) => byDay(one.on, other.on));
}

function rowOf(job: Job, first: TodayItem | undefined, records: BoardFacts['records']): BoardRow {
  return {
    job,
    sizes: jobSummary(records, job).sizes.join(', '),
    next: sayNext(job, first),
    ...(first && { on: first.day }),
    late: first !== undefined && first.late > 0,
    gateOpen: isGateOpen(job),
  };
}

/** No day sorts last. */
function byDay(one: Day | undefined, other: Day | undefined): number {
  if (one === other) return 0;
  if (one === undefined) return 1;
  return other === undefined || one < other ? -1 : 1;
}
