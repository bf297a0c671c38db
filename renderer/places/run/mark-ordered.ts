import { moveJob } from '#shared-calc/jobs/move-job.ts';
import { applyChange, squashChanges, type Change } from '#shared-calc/records/change.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { sayJobFault } from '#shared-calc/words/say-job-fault.ts';

/** Moves jobs on to *ordered*, all of them or none: one whose deposit is not in is refused. */
export function markOrdered(records: Records, jobs: readonly string[]): Result<Change, string> {
  let now = records;
  const changes: Change[] = [];
  for (const job of jobs) {
    const moved = moveJob(now, job, 'ordered');
    if (!moved.ok) return failed(sayJobFault(moved.fault));
    now = applyChange(now, moved.value);
    changes.push(moved.value);
  }
  return ok(squashChanges(`${jobs.join(', ')} ordered`, changes));
}
