import { useEffect } from 'preact/hooks';
import type { JobApi } from '#renderer/store/job-api.ts';

/** The job that a link names lies open from then on, on every place. */
export function KeptOpen({ api, job }: { readonly api: JobApi; readonly job: string }) {
  useEffect(() => api.openJob(job), [job]);
  return null;
}
