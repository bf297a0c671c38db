import { writeRoute } from '#renderer/frame/place-route.ts';
import type { JobApi } from '#renderer/store/job-api.ts';
import { idsOf } from '#shared-calc/acts/act.ts';
import type { Change } from '#shared-calc/records/change.ts';

/** Opens the job that a change adds. */
export function openMade({ openJob }: Pick<JobApi, 'openJob'>, change: Change): void {
  const [job = ''] = idsOf(change);
  openJob(job);
  location.hash = writeRoute('jobs', job);
}
