import type { BookContext } from '#renderer/books/book-api.ts';
import { EmptyNote } from '#renderer/kit/empty-note.tsx';
import { letterheadOf } from '#shared-calc/papers/letterhead-of.ts';
import { NeedsPaper } from '#renderer/print/needs-paper.tsx';
import { PickListPaper } from '#renderer/print/pick-list-paper.tsx';
import type { Job } from '#shared-calc/records/records.ts';
import { jobName } from '#shared-calc/jobs/find-job.ts';
import { jobNeeds } from '#shared-calc/derive/job-needs.ts';
import { jobSummary } from '#shared-calc/jobs/job-summary.ts';
import { pickLists } from '#shared-calc/papers/pick-list.ts';
import { calledByLines } from '#shared-calc/words/called-by-words.ts';
import { sayOrderFault } from '#shared-calc/words/say-order-fault.ts';

interface PaperParts {
  readonly job: Job;
  readonly context: BookContext;
}

/** The needs list of a job as a paper. */
export function JobNeedsPaper({ job, context }: PaperParts) {
  const { records, workshop, display, today } = context;
  const worked = context.job(job.id);
  if (!worked || worked.keys.length === 0) return <NoSize job={job} />;
  const needs = jobNeeds(context, worked);
  if (!needs.ok) return <EmptyNote>{sayOrderFault(needs.fault, calledByLines(worked.bench.input()))}</EmptyNote>;
  return (
    <NeedsPaper
      title={jobName(job)}
      sizes={jobSummary(records, job).sizes.join(', ')}
      on={today}
      letterhead={letterheadOf(workshop)}
      list={needs.value.list}
      groupName={(group) => records.margin.get(group)?.label ?? group}
      plants={needs.value.plants}
      display={display}
      coinDecimals={workshop.coinDecimals}
    />
  );
}

/** A pick list for every size of a job. */
export function JobPickListPaper({ job, context }: PaperParts) {
  const { records, workshop, display } = context;
  const worked = context.job(job.id);
  if (!worked || worked.keys.length === 0) return <NoSize job={job} />;
  const lists = pickLists(worked.bench, records, display);
  return <PickListPaper title={jobName(job)} letterhead={letterheadOf(workshop)} lists={lists} display={display} />;
}

function NoSize({ job }: Pick<PaperParts, 'job'>) {
  return <EmptyNote>{job.id} has no size yet: take one first.</EmptyNote>;
}
