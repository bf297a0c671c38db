import { useState } from 'preact/hooks';
import { TextField, Fields } from '#renderer/kit/field.tsx';
import { readDay } from '#shared-calc/read/read-day.ts';
import { entryOfCoins, showCoins } from '#shared-calc/quantity/coins-text.ts';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { paperDay } from '#shared-calc/papers/paper-words.ts';
import { readMoney } from '#shared-calc/read/read-money.ts';
import { calledOf, headingOf } from '#shared-calc/fields/record-fields.ts';
import { JobEntry } from './job-entry.tsx';
import type { JobPart } from './job-part.ts';
import { said } from '#shared-calc/words/say-entry-fault.ts';
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

function Deposit({ job, context: { today, workshop }, api }: JobPart) {
  const [amount, setAmount] = useState(entryOfCoins(job.depositCoins, workshop));
  const [on, setOn] = useState(job.depositOn ?? today);
  const coins = amount.trim() === '' ? undefined : said(readMoney(amount, workshop));
  const day = said(readDay(on, calledOf('job', 'depositOn'), today));
  const record = () => {
    if (!coins?.ok || !day.ok) return;
    api.doAct('recordDeposit', { job: job.id, coins: coins.value, on: day.value });
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
          typing={setOn}
          enter={record}
          wrong={day.ok ? undefined : day.fault}
        />
      </Fields>
      <Buttons>
        {job.depositOn !== undefined && (
          <Muted>
            {showCoins(job.depositCoins, workshop)} {workshop.currency} in on {paperDay(job.depositOn)}
          </Muted>
        )}
        <Button disabled={!coins?.ok || !day.ok} onClick={record}>
          Record the deposit
        </Button>
      </Buttons>
    </>
  );
}
