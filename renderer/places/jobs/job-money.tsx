import { useState } from 'preact/hooks';
import { TextField, Fields } from '#renderer/kit/field.tsx';
import { AgainstDialog } from '#renderer/kit/against-dialog.tsx';
import { againstAct } from '#renderer/store/against-act.ts';
import type { ActInputs } from '#shared-calc/acts/all-acts.ts';
import type { Against } from '#shared-calc/derive/against-move.ts';
import { jobName } from '#shared-calc/jobs/find-job.ts';
import { readDay } from '#shared-calc/read/read-day.ts';
import { entryOfCoins, showCoins } from '#shared-calc/quantity/coins-text.ts';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { paperDay } from '#shared-calc/papers/paper-words.ts';
import { readMoney } from '#shared-calc/read/read-money.ts';
import { calledOf, headingOf } from '#shared-calc/fields/record-fields.ts';
import { JobEntry } from './job-entry.tsx';
import type { JobPart } from './job-part.ts';
import { said } from '#shared-calc/words/say-entry-fault.ts';
import { writeDay } from '#shared-calc/calendar/write-day.ts';
import { Muted } from '#renderer/kit/muted.tsx';

/** A job's dates, its costing basis and its deposit. */
export function JobMoney(part: JobPart) {
  const { job } = part;
  return (
    <section>
      <h3>Dates and deposit</h3>
      <Fields look="wide">
        <JobEntry {...part} field="enquiredOn" />
        <JobEntry {...part} field="handover" />
        <JobEntry {...part} field="basis" />
      </Fields>
      <Deposit key={`${job.id} ${job.depositCoins} ${job.depositOn}`} {...part} />
    </section>
  );
}

interface Asked {
  readonly input: ActInputs['recordDeposit'];
  readonly against: readonly Against[];
}

/** Records a deposit; where something stands against the move that comes with it, a dialog lists that first. */
function useDeposit({ job, context, api }: JobPart) {
  const [asked, setAsked] = useState<Asked>();
  const ask = (input: Asked['input']) => {
    const against = againstAct(api.derived.peek(), 'recordDeposit', input);
    if (against.length > 0) setAsked({ input, against });
    else api.doAct('recordDeposit', input);
  };
  const dialog = asked && (
    <AgainstDialog
      title={`${jobName(job)}: deposit in`}
      does="Record it"
      against={asked.against}
      act={(reason) => api.doAct('recordDeposit', { ...asked.input, ...reason })}
      close={() => setAsked(undefined)}
      context={context}
    />
  );
  return { ask, dialog };
}

function Deposit(part: JobPart) {
  const { job } = part;
  const { today, workshop } = part.context;
  const { ask, dialog } = useDeposit(part);
  const [amount, setAmount] = useState(entryOfCoins(job.depositCoins, workshop));
  const [on, setOn] = useState(writeDay(job.depositOn ?? today, part.context.display.dateOrder));
  const coins = amount.trim() === '' ? undefined : said(readMoney(amount, workshop));
  const day = said(readDay(on, calledOf('job', 'depositOn'), { ...part.context, nearest: true }));
  const record = () => {
    if (!coins?.ok || !day.ok) return;
    ask({ job: job.id, coins: coins.value, on: day.value });
  };
  return (
    <>
      <Fields look="wide">
        <TextField
          label={headingOf('job', 'depositCoins')}
          unit={workshop.currency}
          figure
          text={amount}
          typing={setAmount}
          enter={record}
          wrong={coins && !coins.ok ? coins.fault : undefined}
        />
        <TextField
          label={headingOf('job', 'depositOn')}
          text={on}
          days={part.context}
          typing={setOn}
          enter={record}
          wrong={day.ok ? undefined : day.fault}
        />
      </Fields>
      <Buttons>
        {job.depositOn !== undefined && (
          <Muted>
            {showCoins(job.depositCoins, workshop)} {workshop.currency} in on{' '}
            {paperDay(job.depositOn, part.context.display)}
          </Muted>
        )}
        <Button disabled={!coins?.ok || !day.ok} onClick={record}>
          Record the deposit
        </Button>
      </Buttons>
      {dialog}
    </>
  );
}
