import { useState } from 'preact/hooks';
import { ChoiceField, SettledField, Fields } from '#renderer/kit/field.tsx';
import { readDay } from '#shared-calc/read/read-day.ts';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { Fault } from '#renderer/kit/note.tsx';
import { isGateOpen } from '#shared-calc/jobs/move-job.ts';
import { jobStates } from '#shared-calc/fields/job.ts';
import type { JobPart } from './job-part.ts';
import { sayTaken } from './say-taken.ts';
import css from './jobs.module.css';
import { said } from '#shared-calc/words/say-entry-fault.ts';

/** A job's state, its next state and what that needs, and what is due by when. */
export function JobState({ job, context, api }: JobPart) {
  const [wrong, setWrong] = useState<string>();
  const { today } = context;
  const move = (state: string) => {
    const before = api.derived.peek();
    const says = () => api.say(sayTaken(before, { job: job.id, state }));
    setWrong(api.doAct('moveJob', { job: job.id, state }, says));
  };
  const next = jobStates[jobStates.indexOf(job.state) + 1];
  const plan = (act: string, on: string | undefined) => api.doAct('setNextAct', { job: job.id, act, on });
  const planDay = (text: string) => {
    if (text.trim() === '') return plan(job.nextAct, undefined);
    const day = said(readDay(text, 'By', today));
    return day.ok ? plan(job.nextAct, day.value) : api.refuse(day.fault);
  };
  return (
    <section>
      <h3>State and next act</h3>
      <Fields look="wide">
        <ChoiceField
          label="State"
          value={job.state}
          options={jobStates.map((state) => ({ value: state, label: state }))}
          choose={move}
        />
        <SettledField label="Next act" text={job.nextAct} settle={(text) => plan(text.trim(), job.nextOn)} />
        <SettledField label="By the day" hint={`a day, as ${today}`} text={job.nextOn ?? ''} settle={planDay} />
      </Fields>
      <p class={css['gate']}>{gateWords(job)}</p>
      {wrong !== undefined && <Fault>{wrong}</Fault>}
      {next !== undefined && (
        <Buttons>
          <Button look="main" onClick={() => move(next)}>
            Move on to {next}
          </Button>
        </Buttons>
      )}
    </section>
  );
}

function gateWords(job: JobPart['job']): string {
  if (job.state === 'closed') return 'Closed: nothing is kept for it in the Store.';
  if (isGateOpen(job)) return 'The deposit is in: the shopping run may take it.';
  if (job.state === 'accepted') return 'Accepted: record the deposit, and the shopping run may take it.';
  return 'From deposit in on, a job wants its deposit: record it below with its day.';
}
