import { addDays, type Day } from '#shared-calc/calendar/day.ts';
import { isGateOpen } from '#shared-calc/jobs/move-job.ts';
import { jobSummary } from '#shared-calc/jobs/job-summary.ts';
import { jobStates } from '#shared-calc/fields/job.ts';
import type { Job, Records } from '#shared-calc/records/records.ts';
import { jobsInOrder } from '#shared-calc/jobs/find-job.ts';

export interface BoardRow {
  readonly job: Job;
  readonly sizes: string;
  /** Its next act should have been done before today. */
  readonly late: boolean;
  /** The shopping run may include it. */
  readonly gateOpen: boolean;
}

export interface BoardGroup {
  readonly title: string;
  readonly rows: readonly BoardRow[];
}

type BoardRecords = Pick<Records, 'job' | 'size'>;

/** Jobs by their state, in the order of states; within a state by the date of the next act. */
export function boardByState(records: BoardRecords, today: Day): readonly BoardGroup[] {
  const rows = boardRows(records, today);
  return jobStates
    .map((state) => ({ title: state, rows: rows.filter(({ job }) => job.state === state) }))
    .filter((group) => group.rows.length > 0);
}

const dayGroups = ['Late', 'Today', 'Within a week', 'Later', 'No day set', 'Closed'] as const;

/** Jobs by the day of their next act. */
export function boardByDay(records: BoardRecords, today: Day): readonly BoardGroup[] {
  const rows = boardRows(records, today);
  return dayGroups
    .map((title) => ({ title, rows: rows.filter((row) => dayGroup(row, today) === title) }))
    .filter((group) => group.rows.length > 0);
}

function dayGroup({ job: { state, nextOn }, late }: BoardRow, today: Day): (typeof dayGroups)[number] {
  if (state === 'closed') return 'Closed';
  if (nextOn === undefined) return 'No day set';
  if (late) return 'Late';
  if (nextOn === today) return 'Today';
  return nextOn <= addDays(today, 7) ? 'Within a week' : 'Later';
}

function boardRows(records: BoardRecords, today: Day): readonly BoardRow[] {
  return jobsInOrder(records)
    .map((job) => ({
      job,
      sizes: jobSummary(records, job).sizes.join(', '),
      late: job.state !== 'closed' && job.nextOn !== undefined && job.nextOn < today,
      gateOpen: isGateOpen(job),
    }))
    .toSorted(({ job: one }, { job: other }) => byDay(one.nextOn, other.nextOn));
}

/** No day sorts last. */
function byDay(one: Day | undefined, other: Day | undefined): number {
  if (one === other) return 0;
  if (one === undefined) return 1;
  return other === undefined || one < other ? -1 : 1;
}
