import { useState } from 'preact/hooks';
import { FieldEntry } from '#renderer/books/field-entry.tsx';
import { Fields } from '#renderer/kit/field.tsx';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { Fault } from '#renderer/kit/note.tsx';
import type { Reason } from '#shared-calc/acts/reason.ts';
import { againstMove, type Against } from '#shared-calc/derive/against-move.ts';
import { isGateOpen, moveJob } from '#shared-calc/jobs/move-job.ts';
import { jobStates } from '#shared-calc/fields/job.ts';
import type { Job } from '#shared-calc/records/records.ts';
import type { JobPart } from './job-part.ts';
import { MoveDialog } from './move-dialog.tsx';
import { sayTaken } from './say-taken.ts';
import css from './jobs.module.css';

interface Asked {
  readonly state: Job['state'];
  readonly against: readonly Against[];
}

/** A job's state, its next state and what that needs, and what is due by when. */
export function JobState({ job, context, api }: JobPart) {
  const [wrong, setWrong] = useState<string>();
  const [asked, setAsked] = useState<Asked>();
  const move = (state: Job['state'], reason: Reason = {}) => {
    const before = api.derived.peek();
    const input = { job: job.id, state, ...reason };
    return api.doAct('moveJob', input, () => api.say(sayTaken(before, input)));
  };
  /** Asks first where something stands against the move. */
  const ask = (state: Job['state']) => {
    const derived = api.derived.peek();
    const against = moveJob(derived.records, job.id, state).ok ? againstMove(derived, job.id, state) : [];
    const refused = against.length > 0 ? undefined : move(state);
    setAsked(against.length > 0 ? { state, against } : undefined);
    setWrong(refused);
    return refused;
  };
  const next = jobStates[jobStates.indexOf(job.state) + 1];
  const plan = ({ nextAct: act, nextOn: on }: Job) => api.doAct('setNextAct', { job: job.id, act, on });
  const parts = { kind: 'job', record: job, context } as const;
  return (
    <section>
      <h3>State and next act</h3>
      <Fields look="wide">
        <FieldEntry {...parts} field="state" put={({ state }) => ask(state)} />
        <FieldEntry {...parts} field="nextAct" put={plan} />
        <FieldEntry {...parts} field="nextOn" put={plan} />
      </Fields>
      <p class={css['gate']}>{gateWords(job)}</p>
      {wrong !== undefined && <Fault>{wrong}</Fault>}
      {next !== undefined && (
        <Buttons>
          <Button look="main" onClick={() => ask(next)}>
            Move on to {next}
          </Button>
        </Buttons>
      )}
      {asked && (
        <MoveDialog
          {...{ job, context, api, ...asked }}
          move={(reason) => move(asked.state, reason)}
          close={() => setAsked(undefined)}
        />
      )}
    </section>
  );
}

function gateWords(job: Job): string {
  if (job.state === 'closed') return 'Closed: nothing is kept for it in the Store.';
  if (isGateOpen(job)) return 'The deposit is in: the shopping run may take it.';
  if (job.state === 'accepted') return 'Accepted: record the deposit, and the shopping run may take it.';
  return 'From deposit in on, a job wants its deposit: record it below with its day.';
}
