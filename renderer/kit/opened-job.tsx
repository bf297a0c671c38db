import { useEffect } from 'preact/hooks';
import type { JobApi } from '#renderer/store/job-api.ts';

/** Makes the job that a link names the open job of every view. */
export function OpenedJob({ api, job }: { readonly api: JobApi; readonly job: string }) {
  useEffect(() => api.openJob(job), [job]);
  return null;
}
