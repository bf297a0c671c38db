import type { Job, Records } from '#shared-calc/records/records.ts';
import { sizesOf, sizeWords } from './job-sheet.ts';

export interface JobSummary {
  readonly job: string;
  readonly title: string;
  readonly state: Job['state'];
  /** `T05`, `T07x2`, in the order of the bench. */
  readonly sizes: readonly string[];
  readonly handover: string | undefined;
}

export function jobSummary(records: Pick<Records, 'size'>, job: Job): JobSummary {
  const { id, title, state, handover } = job;
  return { job: id, title, state, sizes: sizesOf(records, id).map(sizeWords), handover };
}
