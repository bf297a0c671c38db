import { useState } from 'preact/hooks';
import { AgainstDialog } from '#renderer/kit/against-dialog.tsx';
import type { Reason } from '#shared-calc/acts/reason.ts';
import { againstMove, wantsReason, type Against } from '#shared-calc/derive/against-move.ts';
import { jobName } from '#shared-calc/jobs/find-job.ts';
import { moveJob } from '#shared-calc/jobs/move-job.ts';
import type { Job } from '#shared-calc/records/records.ts';
import type { JobPart } from './job-part.ts';
import type { Acceptance } from '#shared-calc/acts/accept-quote.ts';
import type { ActFault } from '#shared-calc/acts/act-fault.ts';
import { actTable } from '#shared-calc/acts/all-acts.ts';
import { soldSaid } from '#shared-calc/papers/sold-said.ts';
import { AskDialog } from '#renderer/kit/ask-dialog.tsx';
import { sayTaken } from './say-taken.ts';

type Differs = Extract<ActFault, { readonly kind: 'differs-from-quote' }>;

interface Asked {
  readonly state: Job['state'];
  readonly against: readonly Against[];
}

/** Moves a job; where something stands against the move, a dialog lists that first. */
export function useMove({ job, context, api }: JobPart) {
  const [asked, setAsked] = useState<Asked>();
  const [differs, setDiffers] = useState<Differs>();
  const move = (state: Job['state'], reason: Reason & Pick<Acceptance, 'asIssued'> = {}) => {
    const before = api.derived.peek();
    const input = { job: job.id, state, ...reason };
    return api.doAct('moveJob', input, (change) =>
      api.say([sayTaken(before, input), ...soldSaid(before, change, job.id)].filter((said) => said !== '').join(' ')),
    );
  };
  const ask = (state: Job['state']) => {
    const derived = api.derived.peek();
    const tried = state === 'accepted' ? actTable.moveJob.run(derived, { job: job.id, state }) : undefined;
    if (tried?.ok === false && tried.fault.kind === 'differs-from-quote') {
      setDiffers(tried.fault);
      return undefined;
    }
    const against = moveJob(derived.records, job.id, state).ok ? againstMove(derived, job.id, state) : [];
    setAsked(against.length > 0 ? { state, against } : undefined);
    return against.length > 0 ? undefined : move(state);
  };
  if (differs) {
    const run = () => move('accepted', { asIssued: true }) === undefined;
    const parts = { run, wrong: undefined, close: () => setDiffers(undefined) };
    const { quote, words } = differs;
    const dialog = (
      <AskDialog title={`${jobName(job)}: accepted`} does={`Accept ${quote} as issued`} {...parts}>
        {() => (
          <p>
            {job.id} differs from {quote} in {words}. Issue a revision first, or accept it as issued: that puts them
            back to what the client was sent.
          </p>
        )}
      </AskDialog>
    );
    return { ask, dialog };
  }
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
