import { useState } from 'preact/hooks';
import type { BookContext } from '#renderer/books/book-api.ts';
import { ChoiceField, TextField, Fields } from '#renderer/kit/field.tsx';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import type { JobApi } from '#renderer/store/job-api.ts';
import { goodsWords } from '#shared-calc/quantity/goods-words.ts';
import { readMeasure } from '#shared-calc/read/read-measure.ts';
import { jobOptions } from './job-options.ts';
import { StockEntryCard } from './stock-entry-card.tsx';
import type { StoreRow } from './store-rows.ts';
import { said } from '#shared-calc/words/say-entry-fault.ts';
import { MutedLine } from '#renderer/kit/muted.tsx';
import { PanelHead, SidePanel } from '#renderer/kit/side-panel.tsx';

interface PanelParts {
  readonly row: StoreRow | undefined;
  readonly context: BookContext;
  readonly api: JobApi;
}

/** One material: use some of it, reserve some for a job, and every bag of it in the Store. */
export function StorePanel({ row, context, api }: PanelParts) {
  return (
    <SidePanel label="About the chosen material">
      {row ? (
        <>
          <PanelHead
            where="Store"
            title={`${row.material} ${row.label}`}
            under={`${goodsWords(row.free, row.unit, context.display)} free for any job`}
          />
          <TakeOrKeep key={row.material} row={row} context={context} api={api} />
          {row.entries.map((entry) => (
            <StockEntryCard key={entry.id} entry={entry} unit={row.unit} context={context} api={api} />
          ))}
        </>
      ) : (
        <MutedLine>Choose a material to use it, keep it for a job or put it right.</MutedLine>
      )}
    </SidePanel>
  );
}

function TakeOrKeep({ row, context: { records, display }, api }: PanelParts & { readonly row: StoreRow }) {
  const [text, setText] = useState('');
  const [job, setJob] = useState(api.job.peek() ?? '');
  const { material, unit } = row;
  const amount = said(readMeasure(text, { name: 'Amount', stored: unit, low: 1e-6, mayBeEmpty: true }, display));
  const wanted = amount.ok ? amount.value : undefined;
  const use = () => {
    if (wanted === undefined) return;
    api.doAct('useStock', { material, amount: wanted, job: job === '' ? undefined : job }, () => setText(''));
  };
  const keep = () => {
    if (wanted === undefined || job === '') return;
    api.doAct('reserve', { job, material, amount: wanted }, () => setText(''));
  };
  return (
    <section>
      <h3>Use some, or keep it for a job</h3>
      <Fields>
        <TextField
          label="Amount"
          unit={unit === 'each' ? '' : unit}
          figure
          text={text}
          typing={setText}
          wrong={amount.ok ? undefined : amount.fault}
        />
        <ChoiceField label="Job" value={job} options={jobOptions(records, 'no job')} choose={setJob} />
      </Fields>
      <Buttons>
        <Button disabled={wanted === undefined || job === ''} onClick={keep}>
          Keep for {job === '' ? 'a job' : job}
        </Button>
        <Button look="main" disabled={wanted === undefined} onClick={use}>
          Use
        </Button>
      </Buttons>
    </section>
  );
}
