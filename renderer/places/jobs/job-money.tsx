import { useState } from 'preact/hooks';
import { ChoiceField, SettledField, TextField, Fields } from '#renderer/kit/field.tsx';
import { readDay } from '#shared-calc/read/read-day.ts';
import { entryOfCoins, showCoins } from '#shared-calc/quantity/coins-text.ts';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { paperDay } from '#shared-calc/papers/paper-words.ts';
import { readMoney } from '#shared-calc/read/read-money.ts';
import type { JobPart } from './job-part.ts';
import type { JobFields } from '#shared-calc/acts/job-acts.ts';
import { said } from '#shared-calc/words/say-entry-fault.ts';

const bases = [
  { value: 'used', label: 'used: what goes in' },
  { value: 'packs', label: 'packs: every bag bought' },
];

/** A job's dates, its costing basis and its deposit. */
export function JobMoney(part: JobPart) {
  const { job, api } = part;
  const choose = (basis: string) =>
    api.doAct('writeJob', { job: job.id, fields: { basis: basis === 'packs' ? 'packs' : 'used' } });
  return (
    <section>
      <h3>Dates and deposit</h3>
      <Fields look="wide">
        <DayEntry {...part} field="enquiredOn" label="Enquiry of" />
        <DayEntry {...part} field="handover" label="Handover wanted" />
        <ChoiceField label="Costing basis" value={job.basis} options={bases} choose={choose} />
      </Fields>
      <Deposit key={`${job.id} ${job.depositCoins} ${job.depositOn}`} {...part} />
    </section>
  );
}

interface DayEntryParts extends JobPart {
  readonly field: keyof Pick<JobFields, 'enquiredOn' | 'handover'>;
  readonly label: string;
}

function DayEntry({ job, context: { today }, api, field, label }: DayEntryParts) {
  const settle = (text: string) => {
    const day = text.trim() === '' ? undefined : said(readDay(text, label, today));
    if (day && !day.ok) return api.refuse(day.fault);
    return api.doAct('writeJob', { job: job.id, fields: { [field]: day?.value ?? null } });
  };
  return <SettledField label={label} hint={`a day, as ${today}`} text={job[field] ?? ''} settle={settle} />;
}

function Deposit({ job, context: { today, workshop }, api }: JobPart) {
  const [amount, setAmount] = useState(entryOfCoins(job.depositCoins, workshop));
  const [on, setOn] = useState(job.depositOn ?? today);
  const coins = amount.trim() === '' ? undefined : said(readMoney(amount, workshop));
  const day = said(readDay(on, 'On', today));
  const record = () => {
    if (!coins?.ok || !day.ok) return;
    api.doAct('recordDeposit', { job: job.id, coins: coins.value, on: day.value });
  };
  return (
    <>
      <Fields look="wide">
        <TextField
          label="Deposit"
          unit={workshop.currency}
          figure
          text={amount}
          typing={setAmount}
          enter={record}
          wrong={coins && !coins.ok ? coins.fault : undefined}
        />
        <TextField label="In on" text={on} typing={setOn} enter={record} wrong={day.ok ? undefined : day.fault} />
      </Fields>
      <Buttons>
        {job.depositOn !== undefined && (
          <span class="aside">
            {showCoins(job.depositCoins, workshop)} {workshop.currency} in on {paperDay(job.depositOn)}
          </span>
        )}
        <Button disabled={!coins?.ok || !day.ok} onClick={record}>
          Record the deposit
        </Button>
      </Buttons>
    </>
  );
}
