import { z } from 'zod';
import { againstMove, wantsReason } from '#shared-calc/derive/against-move.ts';
import type { Derived } from '#shared-calc/derive/derived.ts';
import { jobStates } from '#shared-calc/fields/job.ts';
import { findJob } from '#shared-calc/jobs/find-job.ts';
import type { JobFault } from '#shared-calc/jobs/job-fault.ts';
import { releaseStock } from '#shared-calc/jobs/keep-stock.ts';
import { isBefore, moveJob as movedJob } from '#shared-calc/jobs/move-job.ts';
import { squashChanges, type Change } from '#shared-calc/records/change.ts';
import type { Job } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { act } from './act.ts';
import type { ActFault } from './act-fault.ts';
import { buildJob, type Short } from './build-job.ts';
import { readReason, reasonFields, withReason } from './reason.ts';

const MoveJob = z.strictObject({ job: z.string(), state: z.string(), ...reasonFields });

export const moveJob = act<z.infer<typeof MoveJob>>({
  name: 'moveJob',
  says: 'Moves a job to a state; a job that is built takes its materials out of the Store. From built on, what stands against it needs a reason and who decides.',
  input: MoveJob,
  run: (derived, input) => {
    const moved = moveAndTake(derived, input);
    return moved.ok ? ok(moved.value.change) : moved;
  },
});

export interface Moved {
  readonly change: Change;
  /** What the build used and the Store did not have. */
  readonly short: readonly Short[];
  /** Why nothing was taken from the Store. A bench without a figure does not stop a tank from being built. */
  readonly notTaken?: JobFault;
}

/** Moves a job, and reports what the Store lacked for its build. */
export function moveAndTake(derived: Derived, input: z.infer<typeof MoveJob>): Result<Moved, ActFault> {
  const { records, today: on } = derived;
  const job = findJob(records, input.job);
  if (!job.ok) return job;
  const { id, state: from } = job.value;
  const change = movedJob(records, id, input.state);
  if (!change.ok) return change;
  const reason = readReason(records, input);
  if (!reason.ok) return reason;
  const step = jobStates.find((each) => each === input.state) ?? from;
  const against = againstMove(derived, id, step);
  if (!reason.value && against.length > 0 && wantsReason(from, step))
    return failed({ kind: 'stands-against', job: id, state: step, against });
  const taken = takenFor(derived, job.value, { step, change: change.value });
  const kept = { step, job: id, reason: reason.value, against, on };
  return ok({ ...taken, change: withReason(taken.change, records, kept) });
}

interface Move {
  readonly step: Job['state'];
  readonly change: Change;
}

function takenFor(derived: Derived, { id, state }: Job, { step, change }: Move): Moved {
  if (step === 'closed') return { change: withNothingKept(derived, id, change), short: [] };
  if (step !== 'built' || state === 'closed' || !isBefore(state, 'built')) return { change, short: [] };
  const built = buildJob(derived, id);
  return built.ok ? built.value : { change, short: [], notTaken: built.fault };
}

/** Nothing stays kept for a closed job. */
function withNothingKept({ records, today }: Derived, id: string, change: Change): Change {
  return squashChanges(change.label, [change, releaseStock(records, id, today)]);
}
