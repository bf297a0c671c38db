import type { BookContext } from '#renderer/books/book-api.ts';
import { writeRoute } from '#renderer/frame/place-route.ts';
import { Checkbox } from '#renderer/kit/checkbox.tsx';
import { jobName, jobsInOrder } from '#shared-calc/jobs/find-job.ts';
import { EmptyNote } from '#renderer/kit/empty-note.tsx';
import { Flag } from '#renderer/kit/flag.tsx';
import { Link } from '#renderer/kit/link.tsx';
import { paperDay } from '#shared-calc/papers/paper-words.ts';
import { isBefore, isGateOpen } from '#shared-calc/jobs/move-job.ts';
import { sizesOf, sizeWords } from '#shared-calc/jobs/job-sheet.ts';
import type { Job, Records } from '#shared-calc/records/records.ts';
import css from './run.module.css';
import { Muted } from '#renderer/kit/muted.tsx';

interface RunJobsParts {
  readonly context: BookContext;
  readonly chosen: readonly string[];
  readonly turn: (job: string) => void;
}

/** The jobs the run is for: those with a deposit first; the others say what they lack. */
export function RunJobs({ context, chosen, turn }: RunJobsParts) {
  const jobs = buyableJobs(context.records);
  if (jobs.length === 0)
    return (
      <EmptyNote>
        No job waits to be bought for: a run takes jobs whose deposit is in.{' '}
        <Link href={writeRoute('jobs')}>See the jobs</Link>
      </EmptyNote>
    );
  return (
    <fieldset class={css['runJobs']}>
      <legend>Jobs on this run</legend>
      {jobs.map((job) => (
        <Checkbox
          key={job.id}
          label={<RunJob job={job} context={context} />}
          on={chosen.includes(job.id)}
          turn={() => turn(job.id)}
        />
      ))}
    </fieldset>
  );
}

function RunJob({ job, context: { records, display } }: Pick<RunJobsParts, 'context'> & { readonly job: Job }) {
  return (
    <span class={css['runJob']}>
      <span>
        <b>{jobName(job)}</b> {sizesOf(records, job.id).map(sizeWords).join(', ') || 'no size yet'}
        {job.handover !== undefined && <Muted>, handover {paperDay(job.handover, display)}</Muted>}
      </span>
      <Gate job={job} />
    </span>
  );
}

function Gate({ job }: { readonly job: Job }) {
  if (isGateOpen(job)) return <Muted>{isBefore(job.state, 'ordered') ? 'deposit in' : job.state}</Muted>;
  return (
    <Flag state="watch" sign="watch">
      {job.state}, deposit not in: <Link href={writeRoute('jobs', job.id)}>record it</Link>
    </Flag>
  );
}

/** Jobs that are not built yet: those with an open gate first, those that are ordered last. */
export function buyableJobs(records: Pick<Records, 'job'>): readonly Job[] {
  const jobs = jobsInOrder(records).filter((job) => isBefore(job.state, 'built'));
  const [open, ordered] = [
    jobs.filter((job) => isBefore(job.state, 'ordered')),
    jobs.filter((job) => !isBefore(job.state, 'ordered')),
  ];
  return [...open.filter(isGateOpen), ...open.filter((job) => !isGateOpen(job)), ...ordered];
}
