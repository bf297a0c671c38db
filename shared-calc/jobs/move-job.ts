import type { Change } from '#shared-calc/records/change.ts';
import { diffRecords } from '#shared-calc/records/diff-records.ts';
import { jobStates } from '#shared-calc/fields/job.ts';
import type { Job, Records } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { nearestName } from '#shared-calc/rule/nearest.ts';
import { findJob } from './find-job.ts';
import type { JobFault } from './job-fault.ts';
import { arrived } from './next-act.ts';
import { putRecords } from './put-records.ts';

/**
 * Moves a job to a state: forward past any others, or back, which the label then says. From *deposit in* on it needs
 * its money: a recorded deposit, or for *deposit in* itself an accepted quote. An enquiry can be closed without money.
 */
export function moveJob(records: Records, id: string, state: string): Result<Change, JobFault> {
  const found = findJob(records, id);
  if (!found.ok) return found;
  const job = found.value;
  const to = jobStates.find((each) => each === state);
  if (to === undefined) {
    const near = nearestName(state, jobStates);
    return failed({ kind: 'no-state', state, states: jobStates, ...(near !== undefined && { near }) });
  }
  if (to === job.state) return failed({ kind: 'same-state', job: id, state: to });
  if (lacksDeposit(job, to)) return failed({ kind: 'no-deposit-yet', job: id, state: to });
  const label = isBackward(job.state, to) ? `${id} back from ${job.state} to ${to}` : `${id} ${to}`;
  return ok(diffRecords(label, records, { ...records, job: putRecords(records.job, [arrived(job, to)]) }));
}

/** Whether one state comes before another in the order of states. */
export function isBefore(state: Job['state'], other: Job['state']): boolean {
  return jobStates.indexOf(state) < jobStates.indexOf(other);
}

/** Whether a move goes back in the order of states. */
export function isBackward(from: Job['state'], to: Job['state']): boolean {
  return isBefore(to, from);
}

/** The gate of the shopping run: open with a recorded deposit, or in a later state. */
export function isGateOpen(job: Pick<Job, 'state' | 'depositOn'>): boolean {
  return job.state !== 'closed' && (job.depositOn !== undefined || !isBefore(job.state, 'deposit in'));
}

function lacksDeposit(job: Job, to: Job['state']): boolean {
  if (to === 'closed' || isBefore(to, 'deposit in') || isGateOpen({ ...job, state: openState(job) })) return false;
  return !(to === 'deposit in' && job.state === 'accepted');
}

/** A closed job counts as unpaid when it is opened again, unless its deposit is recorded. */
function openState(job: Job): Job['state'] {
  return job.state === 'closed' ? 'enquiry' : job.state;
}
