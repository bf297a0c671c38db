import { derive } from '#shared-calc/derive/derived.ts';
import { useState } from 'preact/hooks';
import { ChoiceField, SettledField, Fields } from '#renderer/kit/field.tsx';
import { readDay } from '#renderer/books/day-field.ts';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { Fault } from '#renderer/kit/note.tsx';
import { isGateOpen } from '#shared-calc/jobs/move-job.ts';
import { setNextAct } from '#shared-calc/jobs/next-act.ts';
import { jobStates } from '#shared-calc/fields/job.ts';
import { failed } from '#shared-calc/result.ts';
import type { JobPart } from './job-part.ts';
import { told } from '#renderer/store/money-hands.ts';
import { moveTo } from './write-job.ts';

/** Where a job stands, where it goes next and what that asks for, and what is to be done by when. */
export function JobState({ job, context, hands }: JobPart) {
  const [wrong, setWrong] = useState<string>();
  const { today } = context;
  const move = (state: string) => {
    const moved = moveTo(derive(hands.records.peek(), today), { job: job.id, state });
    setWrong(moved.ok ? undefined : moved.fault);
    if (!moved.ok) return hands.refuse(moved.fault);
    hands.apply(moved.value.change);
    if (moved.value.short !== '') hands.say(moved.value.short);
  };
  const next = jobStates[jobStates.indexOf(job.state) + 1];
  const plan = (act: string, on: string | undefined) =>
    hands.act(told(setNextAct(hands.records.peek(), job.id, act, on)));
  const planDay = (text: string) => {
    if (text.trim() === '') return plan(job.nextAct, undefined);
    const day = readDay(text, 'By', today);
    return day.ok ? plan(job.nextAct, day.value) : hands.act(failed(day.fault));
  };
  return (
    <section class="job-state">
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
      <p class="gate">{gateWords(job)}</p>
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
