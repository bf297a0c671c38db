import { useState } from 'preact/hooks';
import type { Reason } from '#shared-calc/acts/reason.ts';
import type { Against } from '#shared-calc/derive/against-move.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { AskedAgainst } from './against.tsx';
import { AskDialog } from './ask-dialog.tsx';

interface AgainstParts {
  readonly title: string;
  /** Label of the main button. */
  readonly does: string;
  readonly against: readonly Against[];
  /** Whether it goes on only with a reason and who decides. */
  readonly isRefused?: boolean;
  /** Does it, or returns why not. */
  readonly act: (reason: Reason) => string | undefined;
  readonly close: () => void;
  readonly context: { readonly display: Display; readonly records: Pick<Records, 'rate'> };
}

/** Lists what stands against moving a job before it is moved; asks for a reason and who decides. */
export function AgainstDialog({ title, does, against, isRefused = false, act, close, context }: AgainstParts) {
  const [reason, setReason] = useState<Reason>({});
  const [wrong, setWrong] = useState<string>();
  const run = () => {
    const refused = act(reason);
    setWrong(refused);
    return refused === undefined;
  };
  return (
    <AskDialog {...{ title, does, run, wrong, close }}>
      {(enter) => (
        <AskedAgainst
          {...{ against, reason, enter }}
          display={context.display}
          records={context.records}
          change={setReason}
          hint={
            isRefused
              ? 'It goes on only with a reason and who decides. Both are kept with the job and printed on its build card.'
              : 'It may go on without them. A reason and who decides are kept with the job and printed on its build card.'
          }
        />
      )}
    </AskDialog>
  );
}
