import type { PlannedJobs } from '#renderer/store/planned-jobs.ts';
import { isUnderWay, plannedJobs } from '#renderer/store/planned-jobs.ts';
import type { PlanBook } from '#renderer/store/plan-book.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import { isBefore } from '#shared-calc/jobs/move-job.ts';
import { keysOf } from '#shared-calc/jobs/job-sheet.ts';
import { openJob } from '#shared-calc/jobs/open-sheet.ts';
import { animalsFor } from '#shared-calc/prepare/culture-demands.ts';
import type { CultureKind, Job, Records } from '#shared-calc/records/records.ts';
import { calledByLines } from '#shared-calc/words/called-by-words.ts';
import { sayOrderFault } from '#shared-calc/words/say-order-fault.ts';

/** What a job's build takes of a culture, and on which day. */
export interface JobDemand {
  readonly job: string;
  readonly title: string;
  readonly date: Day;
  readonly animals: number;
}

export interface KindDemands {
  readonly demands: readonly JobDemand[];
  /** Jobs whose demand cannot be reckoned, with the reason. */
  readonly unknown: readonly { readonly job: string; readonly title: string; readonly says: string }[];
}

interface Terms {
  readonly plans: PlanBook;
  readonly today: Day;
}

/** Paid jobs that are still to be built: the ones that cultures are kept for. */
export function jobsToStock(records: Records, terms: Terms): PlannedJobs {
  return plannedJobs(records, (job) => isUnderWay(job) && isBefore(job.state, 'built'), terms);
}

/** What each of those jobs takes of a kind on its build day, in order of date. A recipe without the line takes none. */
export function kindDemands(
  records: Records,
  { planned, without }: PlannedJobs,
  kind: CultureKind,
  today: Day,
): KindDemands {
  const demands: JobDemand[] = [];
  const unknown: KindDemands['unknown'][number][] = without.map(({ job, says }) => ({
    job: job.id,
    title: job.title,
    says,
  }));
  for (const { job, plan } of planned) {
    const animals = animalsOf(records, job, { kind, today });
    if (typeof animals === 'string') unknown.push({ job: job.id, title: job.title, says: animals });
    else if (animals > 0) demands.push({ job: job.id, title: job.title, date: plan.build, animals });
  }
  return {
    demands: demands.toSorted((one, other) => (one.date < other.date ? -1 : Number(one.date > other.date))),
    unknown,
  };
}

function animalsOf(
  records: Records,
  job: Job,
  { kind, today }: { readonly kind: CultureKind; readonly today: Day },
): number | string {
  const { sheet, bench } = openJob(records, job, today);
  const animals = animalsFor(bench, keysOf(sheet), kind);
  if (animals.ok) return animals.value;
  return animals.fault.kind === 'no-seed-line' ? 0 : sayOrderFault(animals.fault, calledByLines(bench.input()));
}
