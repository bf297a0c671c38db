import { useState } from 'preact/hooks';
import { FieldEntry } from '#renderer/books/field-entry.tsx';
import { Fields } from '#renderer/kit/field.tsx';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { Fault } from '#renderer/kit/note.tsx';
import { isGateOpen } from '#shared-calc/jobs/move-job.ts';
import { jobStates } from '#shared-calc/fields/job.ts';
import type { Job } from '#shared-calc/records/records.ts';
import type { JobPart } from './job-part.ts';
import { useMove } from './use-move.tsx';
import css from './jobs.module.css';

/** A job's state, its next state and what that needs, and what is due by when. */
export function JobState({ job, context, api }: JobPart) {
  const [wrong, setWrong] = useState<string>();
  const { ask: move, dialog } = useMove({ job, context, api });
  const ask = (state: Job['state']) => {
    const refused = move(state);
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
      {dialog}
    </section>
  );
}

function gateWords(job: Job): string {
  if (job.state === 'closed') return 'Closed: nothing is kept for it in the Store.';
  if (isGateOpen(job)) return 'The deposit is in: the shopping run may take it.';
  if (job.state === 'accepted') return 'Accepted: record the deposit, and the shopping run may take it.';
  return 'From deposit in on, a job wants its deposit: record it below with its day.';
}
