import { useMemo } from 'preact/hooks';
import type { BookContext } from '#renderer/books/book-hands.ts';
import { EmptyNote } from '#renderer/kit/empty-note.tsx';
import { letterheadOf } from '#shared-calc/papers/letterhead-of.ts';
import { NeedsPaper } from '#renderer/print/needs-paper.tsx';
import { PickListPaper } from '#renderer/print/pick-list-paper.tsx';
import type { Job } from '#shared-calc/records/records.ts';
import { jobName } from '#renderer/store/money-hands.ts';
import { jobNeeds, jobPickLists } from './printed-job.ts';

interface PaperParts {
  readonly job: Job;
  readonly context: BookContext;
}

/** The needs list of a job as a paper. */
export function JobNeedsPaper({ job, context }: PaperParts) {
  const { records, workshop, display, today } = context;
  const needs = useMemo(() => jobNeeds(records, job, today), [records, job, today]);
  if (!needs.ok) return <EmptyNote>{needs.fault}</EmptyNote>;
  return (
    <NeedsPaper
      title={jobName(job)}
      sizes={needs.value.sizes}
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
  const { records, workshop, display, today } = context;
  const lists = useMemo(() => jobPickLists(records, { job, on: today, display }), [records, job, today, display]);
  if (lists.length === 0) return <EmptyNote>{job.id} has no size yet: take one first.</EmptyNote>;
  return <PickListPaper title={jobName(job)} letterhead={letterheadOf(workshop)} lists={lists} display={display} />;
}
