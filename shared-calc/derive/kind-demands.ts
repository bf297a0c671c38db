import { byDay, type Day } from '#shared-calc/calendar/day.ts';
import { isBefore } from '#shared-calc/jobs/move-job.ts';
import { animalsFor, isFlies, seedingOf, type Seeding } from '#shared-calc/prepare/culture-demands.ts';
import type { PlanFault } from '#shared-calc/prepare/plan-fault.ts';
import type { CultureKind, Records } from '#shared-calc/records/records.ts';
import type { Derived, DerivedJob } from './derived.ts';
import { isUnderWay, plannedJobs, type PlannedJobs } from './planned-jobs.ts';

/** How many of a culture a job's build uses, and on which day. */
export interface JobDemand {
  readonly job: string;
  readonly title: string;
  readonly date: Day;
  readonly animals: number;
  readonly seeding?: readonly Seeding[];
}

export interface KindDemands {
  readonly demands: readonly JobDemand[];
  /** Jobs whose demand cannot be worked out, with the reason. */
  readonly unknown: readonly { readonly job: DerivedJob; readonly fault: PlanFault }[];
}

/** Paid jobs that are still to be built; cultures are grown for these. */
export function jobsToStock(derived: Derived): PlannedJobs {
  return plannedJobs(derived, (job) => isUnderWay(job) && isBefore(job.state, 'built'));
}

/** How many of a kind each of those jobs uses on its build day, by date. A recipe without the line uses none. */
export function kindDemands(derived: Derived, kind: CultureKind): KindDemands {
  if (isFlies(kind)) return { demands: [], unknown: [] };
  const { planned, without } = jobsToStock(derived);
  const demands: JobDemand[] = [];
  const unknown = [...without];
  for (const { job, plan } of planned) {
    const worked = derived.job(job.id);
    if (!worked) continue;
    const animals = animalsFor(worked.bench, worked.keys, kind);
    if (animals.ok && animals.value > 0) {
      const left = animals.value - takenFor(derived.records, job.id, kind);
      const seeding = seedingOf(worked.bench, worked.keys, kind);
      if (left > 0) {
        demands.push({
          job: job.id,
          title: job.title,
          date: plan.build,
          animals: left,
          ...(seeding && { seeding }),
        });
      }
    } else if (!animals.ok && animals.fault.kind === 'no-amount-yet')
      unknown.push({ job: worked, fault: animals.fault });
  }
  return {
    demands: demands.toSorted(byDay(({ date }) => date)),
    unknown,
  };
}

/** Animals that were taken for a job already, of a kind or of another of the same animals. */
export function takenFor(
  { move, cultureKind }: Pick<Records, 'move' | 'cultureKind'>,
  job: string,
  { animals }: Pick<CultureKind, 'animals'>,
): number {
  return [...move.values()]
    .filter((each) => each.job === job && each.what === 'used' && cultureKind.get(each.of)?.animals === animals)
    .reduce((sum, { amount }) => sum - amount, 0);
}
