import type { SaidDays } from '#shared-calc/prepare/say-day.ts';
import { writeDay } from '#shared-calc/calendar/write-day.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import type { Book } from '#electron/book/book.ts';
import { sayEditFault } from '#electron/book/say-book-fault.ts';
import type { ActFault } from '#shared-calc/acts/act-fault.ts';
import { againstChange, allAgainst, type AgainstJob } from '#shared-calc/derive/against-change.ts';
import type { Derived } from '#shared-calc/derive/derived.ts';
import { jobSummary, type JobSummary } from '#shared-calc/jobs/job-summary.ts';
import { dueOf } from '#shared-calc/derive/today.ts';
import { firstOfJobs, sayNext } from '#shared-calc/derive/today-next.ts';
import { isEmptyChange, type Change } from '#shared-calc/records/change.ts';
import type { Result } from '#shared-calc/result.ts';
import { faultJson, sayActFault } from '#shared-calc/words/say-act-fault.ts';
import { today } from '#electron/service/today.ts';
import { sayAgainst } from './say-against.ts';
import { refusal, type Outcome } from './outcome.ts';
import type { Arguments } from './read-arguments.ts';
import { textTable } from './text-table.ts';
import { withBook } from './with-book.ts';

/** The result of an act on a job, before it is written. */
export interface JobAct {
  readonly job: string;
  readonly change: Change;
  /** What the user should also know, one sentence each. */
  readonly notices?: readonly string[];
}

/** Computes an act from the book's records, writes it, and returns the job after it. */
export function actOnJob(given: Arguments, work: (derived: Derived) => Result<JobAct, ActFault>): Promise<Outcome> {
  return withBook(given, (book) => {
    const derived = derive(book.records(), today());
    const act = work(derived);
    if (!act.ok) return refusedAct(act.fault);
    const against = againstChange(derived, act.value.change);
    const says = writeChange(book, act.value.change);
    if (says !== undefined) return refusal(says);
    return answer(derived.update(book.records()), act.value, against);
  });
}

export function refusedAct(fault: ActFault): Outcome {
  const against = fault.kind === 'stands-against' ? sayAgainst(fault.against) : [];
  return { is: 'refused', says: [sayActFault(fault), ...against], json: { fault: faultJson(fault) } };
}

/** Writes a change; says why not. */
export function writeChange(book: Book, change: Change): string | undefined {
  if (isEmptyChange(change)) return undefined;
  const written = book.apply(change, book.revision());
  return written.ok ? undefined : sayEditFault(written.fault);
}

function answer(derived: Derived, { job: id, notices = [] }: JobAct, moved: readonly AgainstJob[]): Outcome {
  const summary = listedJobs(derived).find(({ job }) => job === id);
  if (!summary) throw new Error(`job ${id} was written and is not there`);
  const against = allAgainst(moved);
  return {
    is: 'answer',
    json: { ...jobJson(summary), ...(moved.length > 0 && { against }) },
    table: () => jobTable([summary], derived.display),
    notices: [...notices, ...sayAgainst(against)],
  };
}

/** A job with what is next for it, or whom it waits for. */
export interface ListedJob extends JobSummary {
  readonly next: string;
}

/** Every job of the book, with the day of what is next. */
export function listedJobs(derived: Derived): readonly ListedJob[] {
  const { records, display } = derived;
  const first = firstOfJobs(dueOf(derived));
  return [...records.job.values()].map((job) => {
    const item = first.get(job.id);
    const by = item && job.state !== 'closed' ? `, by ${writeDay(item.day, display.dateOrder)}` : '';
    return { ...jobSummary(records, job), next: `${sayNext(job, item)}${by}` };
  });
}

/** A job as `--json` gives it. */
export function jobJson({ handover, ...summary }: ListedJob): Record<string, unknown> {
  const { job, title, state, sizes, next } = summary;
  return { job, title, state, sizes, handover: handover ?? null, next };
}

export function jobTable(jobs: readonly ListedJob[], { dateOrder }: SaidDays): string {
  const rows = jobs.map(({ job, title, state, sizes, handover, next }) => [
    job,
    title,
    state,
    sizes.join(' '),
    handover === undefined ? '' : writeDay(handover, dateOrder),
    next,
  ]);
  return textTable(['job', 'title', 'state', 'sizes', 'handover', 'next'], rows);
}
