import { useState } from 'preact/hooks';
import { AskedAgainst } from '#renderer/kit/against.tsx';
import { AskDialog } from '#renderer/kit/ask-dialog.tsx';
import type { Reason } from '#shared-calc/acts/reason.ts';
import { wantsReason, type Against } from '#shared-calc/derive/against-move.ts';
import { jobName } from '#shared-calc/jobs/find-job.ts';
import type { Job } from '#shared-calc/records/records.ts';
import type { JobPart } from './job-part.ts';

interface MoveParts extends JobPart {
  readonly state: Job['state'];
  readonly against: readonly Against[];
  /** Moves the job, or returns why not. */
  readonly move: (reason: Reason) => string | undefined;
  readonly close: () => void;
}

/** Lists what stands against a move before it is made; asks for a reason and who decides. */
export function MoveDialog({ job, state, against, move, close, context }: MoveParts) {
  const [reason, setReason] = useState<Reason>({});
  const [wrong, setWrong] = useState<string>();
  const run = () => {
    const refused = move(reason);
    setWrong(refused);
    return refused === undefined;
  };
  const isNeeded = wantsReason(job.state, state);
  return (
    <AskDialog title={`${jobName(job)}: ${state}`} does={`Move on to ${state}`} run={run} wrong={wrong} close={close}>
      {(enter) => (
        <AskedAgainst
          {...{ against, reason, enter }}
          display={context.display}
          records={context.records}
          change={setReason}
          hint={
            isNeeded
              ? 'It goes on only with a reason and who decides. Both are kept with the job and printed on its build card.'
              : 'It may go on without them. A reason and who decides are kept with the job and printed on its build card.'
          }
        />
      )}
    </AskDialog>
  );
}
