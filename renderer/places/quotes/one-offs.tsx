import { useState } from 'preact/hooks';
import type { BookContext } from '#renderer/books/book-api.ts';
import { TextField, Fields } from '#renderer/kit/field.tsx';
import { PickOne } from '#renderer/kit/pick-field.tsx';
import { FieldEntry } from '#renderer/books/field-entry.tsx';
import { headingOf } from '#shared-calc/fields/record-fields.ts';
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

function OneOff({ line, context, api }: Omit<OneOffsParts, 'job'> & { readonly line: QuoteLine }) {
  const put = ({ label, group, costCoins, by }: QuoteLine) =>
    api.doAct('changeQuoteLine', { line: line.id, fields: { label, group, costCoins, by } });
  const parts = { kind: 'quoteLine', record: line, context, put } as const;
  return (
    <div class={css['oneOff']} role="group" aria-label={line.label}>
      <FieldEntry {...parts} field="label" />
      <Fields>
        <FieldEntry {...parts} field="costCoins" />
        <FieldEntry {...parts} field="group" options={groupOptions(context.records)} />
        <FieldEntry {...parts} field="by" />
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
    <div class={css['oneOff']} role="group" aria-label="Another line">
      <h4>Another line</h4>
      <TextField label={headingOf('quoteLine', 'label')} text={label} typing={setLabel} enter={add} />
      <Fields>
        <TextField
          label={headingOf('quoteLine', 'costCoins')}
          unit={workshop.currency}
          figure
          text={cost}
          typing={setCost}
          enter={add}
          wrong={coins && !coins.ok ? coins.fault : undefined}
        />
        <PickOne label={headingOf('quoteLine', 'group')} value={group} options={groups} choose={setGroup} />
      </Fields>
      <Buttons>
        <Button disabled={!isReady} onClick={add}>
          Add the line
        </Button>
      </Buttons>
    </div>
  );
}
