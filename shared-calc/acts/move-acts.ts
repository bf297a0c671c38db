import { z } from 'zod';
import { againstMove, wantsReason } from '#shared-calc/derive/against-move.ts';
import type { Derived } from '#shared-calc/derive/derived.ts';
import { stepsDone } from '#shared-calc/derive/job-facts.ts';
import { whoDoes } from '#shared-calc/derive/plan-acts.ts';
import type { DoneStep } from '#shared-calc/fields/done.ts';
import { jobStates } from '#shared-calc/fields/job.ts';
import { findJob } from '#shared-calc/jobs/find-job.ts';
import type { JobFault } from '#shared-calc/jobs/job-fault.ts';
import { releaseStock } from '#shared-calc/jobs/keep-stock.ts';
import { isBefore, moveJob as movedJob } from '#shared-calc/jobs/move-job.ts';
import { isSoldState } from '#shared-calc/jobs/house-changes.ts';
import { added, applyChange, squashChanges, type Change } from '#shared-calc/records/change.ts';
import type { Job } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { acceptedQuote, quoteToAccept } from './accept-quote.ts';
import { act } from './act.ts';
import type { ActFault } from './act-fault.ts';
import { buildJob, type Short } from './build-job.ts';
import { doneId, readReason, reasonFields, withReason } from './reason.ts';

const MoveJob = z.strictObject({
  job: z.string(),
  state: z.string(),
  quote: z.string().optional().describe('To accepted: the quote that the client said yes to; left out, the latest.'),
  asIssued: z.boolean().optional().describe('To accepted: puts the boxes of the job back to what the quote says.'),
  ...reasonFields,
});

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
  const change = movedOrSold(derived, job.value, input);
  if (!change.ok) return change;
  const reason = readReason(records, input);
  if (!reason.ok) return reason;
  const step = jobStates.find((each) => each === input.state) ?? from;
  const against = againstMove(derived, id, step);
  if (!reason.value && against.length > 0 && wantsReason(from, step))
    return failed({ kind: 'stands-against', job: id, state: step, against });
  const taken = takenFor(derived, job.value, { step, change: change.value });
  const kept = { step, job: id, reason: reason.value, against, on };
  const told = withReason(taken.change, records, kept);
  return ok({
    ...taken,
    change: withFact(told, derived, { job: id, step, who: reason.value?.who ?? whoDoes('build') }),
  });
}

const factOf: Readonly<Partial<Record<Job['state'], DoneStep>>> = { built: 'build', 'handed over': 'handover' };

/** A move that tells a step of the plan over also writes its day, where nobody wrote it yet. */
function withFact(
  change: Change,
  { records, today: on }: Derived,
  { job, step: state, who }: { readonly job: string; readonly step: Job['state']; readonly who: string },
): Change {
  const step = factOf[state];
  if (!step || !records.rate.has(who) || stepsDone(records, job).has(step)) return change;
  const told = { on, step, who, job, ends: true, against: [], note: '' };
  const here = change.added.flatMap(({ kind, record }) => (kind === 'done' ? [record.id] : []));
  const id = doneId([...records.done.keys(), ...here], told);
  return { ...change, added: [...change.added, added('done', { id, ...told })] };
}

/** Saying yes to a later revision moves what a job is sold as, and not the job. */
function movedOrSold(derived: Derived, job: Job, input: z.infer<typeof MoveJob>): Result<Change, ActFault> {
  const { records } = derived;
  if (input.state !== 'accepted') return movedJob(records, job.id, input.state);
  const quote = quoteToAccept(records, job.id, input.quote);
  if (!quote.ok) return quote;
  const isSold = isSoldState(job.state);
  if (!quote.value || (isSold && quote.value.id === job.soldAs)) return movedJob(records, job.id, input.state);
  const sold = acceptedQuote(derived, job, quote.value, input.asIssued ?? false);
  if (!sold.ok || isSold) return sold;
  const moved = movedJob(applyChange(records, sold.value), job.id, input.state);
  return moved.ok ? ok(squashChanges(moved.value.label, [sold.value, moved.value])) : moved;
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
