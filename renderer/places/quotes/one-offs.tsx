import type { QuoteLineFields } from '#shared-calc/acts/quote-line-acts.ts';
import { useState } from 'preact/hooks';
import type { BookContext } from '#renderer/books/book-api.ts';
import { ChoiceField, SettledField, TextField, Fields } from '#renderer/kit/field.tsx';
import { entryOfCoins } from '#shared-calc/quantity/coins-text.ts';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import type { JobApi } from '#renderer/store/job-api.ts';
import { readMoney } from '#shared-calc/read/read-money.ts';
import type { QuoteLine, Records } from '#shared-calc/records/records.ts';
import css from './quotes.module.css';
import { said } from '#shared-calc/words/say-entry-fault.ts';

interface OneOffsParts {
  readonly job: string;
  readonly context: BookContext;
  readonly api: JobApi;
}

const whose = [
  { value: 'client', label: 'the client' },
  { value: 'us', label: 'us' },
];

/** Lines for this job only, at cost; margin and tax come from their group. */
export function OneOffs({ job, context, api }: OneOffsParts) {
  const lines = [...context.records.quoteLine.values()].filter((line) => line.job === job);
  return (
    <section>
      <h3>Lines for this job alone, at cost</h3>
      {lines.map((line) => (
        <OneOff key={line.id} line={line} context={context} api={api} />
      ))}
      <NewOneOff job={job} context={context} api={api} />
    </section>
  );
}

function groupOptions({ margin }: Pick<Records, 'margin'>) {
  return [...margin.values()]
    .toSorted((one, other) => one.order - other.order)
    .map(({ id, label }) => ({ value: id, label }));
}

function OneOff({
  line,
  context: { records, workshop },
  api,
}: Omit<OneOffsParts, 'job'> & { readonly line: QuoteLine }) {
  const put = (fields: QuoteLineFields) => api.doAct('changeQuoteLine', { line: line.id, fields });
  const putCost = (text: string) => {
    const coins = said(readMoney(text, workshop));
    return coins.ok ? put({ costCoins: coins.value }) : api.refuse(coins.fault);
  };
  return (
    <div class={css['oneOff']}>
      <SettledField label="What" text={line.label} settle={(label) => put({ label: label.trim() })} />
      <Fields>
        <SettledField
          label="Cost"
          unit={workshop.currency}
          figure
          text={entryOfCoins(line.costCoins, workshop)}
          settle={putCost}
        />
        <ChoiceField
          label="Group"
          value={line.group}
          options={groupOptions(records)}
          choose={(group) => put({ group })}
        />
        <ChoiceField
          label="Asked for by"
          value={line.by}
          options={whose}
          choose={(by) => put({ by: by === 'us' ? 'us' : 'client' })}
        />
      </Fields>
      <p>
        <Button look="plain" onClick={() => api.doAct('removeQuoteLine', { line: line.id })}>
          Remove {line.label}
        </Button>
      </p>
    </div>
  );
}

function NewOneOff({ job, context: { records, workshop }, api }: OneOffsParts) {
  const [label, setLabel] = useState('');
  const [cost, setCost] = useState('');
  const groups = groupOptions(records);
  const [group, setGroup] = useState(groups[0]?.value ?? '');
  const coins = cost.trim() === '' ? undefined : said(readMoney(cost, workshop));
  const isReady = label.trim() !== '' && coins?.ok === true && group !== '';
  const add = () => {
    if (!isReady || !coins.ok) return;
    api.doAct('addQuoteLine', { job, label, group, costCoins: coins.value, by: 'client' });
    setLabel('');
    setCost('');
  };
  return (
    <div class={css['oneOff']}>
      <TextField label="Another line" text={label} typing={setLabel} enter={add} />
      <Fields>
        <TextField
          label="At cost"
          unit={workshop.currency}
          figure
          text={cost}
          typing={setCost}
          enter={add}
          wrong={coins && !coins.ok ? coins.fault : undefined}
        />
        <ChoiceField label="In the group" value={group} options={groups} choose={setGroup} />
      </Fields>
      <Buttons>
        <Button disabled={!isReady} onClick={add}>
          Add the line
        </Button>
      </Buttons>
    </div>
  );
}
