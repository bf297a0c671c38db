import { useState } from 'preact/hooks';
import { AgainstDialog } from '#renderer/kit/against-dialog.tsx';
import type { Reason } from '#shared-calc/acts/reason.ts';
import { againstMove, wantsReason, type Against } from '#shared-calc/derive/against-move.ts';
import { jobName } from '#shared-calc/jobs/find-job.ts';
import { moveJob } from '#shared-calc/jobs/move-job.ts';
import type { Job } from '#shared-calc/records/records.ts';
import type { JobPart } from './job-part.ts';
import { sayTaken } from './say-taken.ts';

interface Asked {
  readonly state: Job['state'];
  readonly against: readonly Against[];
}

/** Moves a job; where something stands against the move, a dialog lists that first. */
export function useMove({ job, context, api }: JobPart) {
  const [asked, setAsked] = useState<Asked>();
  const move = (state: Job['state'], reason: Reason = {}) => {
    const before = api.derived.peek();
    const input = { job: job.id, state, ...reason };
    return api.doAct('moveJob', input, () => api.say(sayTaken(before, input)));
  };
  const ask = (state: Job['state']) => {
    const derived = api.derived.peek();
    const against = moveJob(derived.records, job.id, state).ok ? againstMove(derived, job.id, state) : [];
    setAsked(against.length > 0 ? { state, against } : undefined);
    return against.length > 0 ? undefined : move(state);
  };
  const dialog = asked && (
    <AgainstDialog
      title={`${jobName(job)}: ${asked.state}`}
      does={`Move on to ${asked.state}`}
      against={asked.against}
      isRefused={wantsReason(job.state, asked.state)}
      act={(reason) => move(asked.state, reason)}
      close={() => setAsked(undefined)}
      context={context}
    />
  );
  return { ask, dialog };
}
