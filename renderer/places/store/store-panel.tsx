import { useState } from 'preact/hooks';
import type { BookContext } from '#renderer/books/book-api.ts';
import { SettledField, TextField, Fields } from '#renderer/kit/field.tsx';
import { PickOne } from '#renderer/kit/pick-field.tsx';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import type { JobApi } from '#renderer/store/job-api.ts';
import type { StoredGoods } from '#shared-calc/derive/store-goods.ts';
import { goodsWords } from '#shared-calc/quantity/goods-words.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import { readMeasure } from '#shared-calc/read/read-measure.ts';
import { jobOptions } from './job-options.ts';
import { LotCard } from './lot-card.tsx';
import { StoreHistory } from './store-history.tsx';
import { said } from '#shared-calc/words/say-entry-fault.ts';
import { MutedLine } from '#renderer/kit/muted.tsx';
import { PanelHead, SidePanel } from '#renderer/kit/side-panel.tsx';

interface PanelParts {
  readonly row: StoredGoods | undefined;
  readonly context: BookContext;
  readonly api: JobApi;
}

/** One kind of goods: use, keep, count or write off some, its least level, its lots, and what came and went. */
export function StorePanel({ row, context, api }: PanelParts) {
  return (
    <SidePanel label="About the chosen material">
      {row ? (
        <>
          <PanelHead
            where="Store"
            title={`${row.of} ${row.label}`}
            under={`${goodsWords(row.now.free, row.unit, context.display)} free for any job`}
          />
          <TakeOrKeep key={`take ${row.of}`} row={row} context={context} api={api} />
          <CountOrWaste key={`count ${row.of}`} row={row} context={context} api={api} />
          <LeastLevel row={row} context={context} api={api} />
          {row.lots.map((lot) => (
            <LotCard key={lot.stock.lot.id} lot={lot} unit={row.unit} context={context} api={api} />
          ))}
          <StoreHistory goods={row.of} unit={row.unit} context={context} />
        </>
      ) : (
        <MutedLine>Choose goods to use them, keep them for a job or count them.</MutedLine>
      )}
    </SidePanel>
  );
}

type RowParts = PanelParts & { readonly row: StoredGoods };

/** An amount as it is typed, in the unit of the goods; nothing until it can be read. */
function useAmount({ unit }: StoredGoods, { display }: BookContext, low: number) {
  const [text, setText] = useState('');
  const read = said(readMeasure(text, { name: 'Amount', stored: unit, low, mayBeEmpty: true }, display));
  return { text, setText, wrong: read.ok ? undefined : read.fault, value: read.ok ? read.value : undefined };
}

interface AmountParts {
  readonly label: string;
  readonly unit: string;
  readonly amount: ReturnType<typeof useAmount>;
}

function AmountField({ label, unit, amount: { text, setText, wrong } }: AmountParts) {
  return (
    <TextField label={label} unit={unit === 'each' ? '' : unit} figure text={text} typing={setText} wrong={wrong} />
  );
}

function TakeOrKeep({ row, context, api }: RowParts) {
  const amount = useAmount(row, context, 1e-6);
  const [job, setJob] = useState(api.job.peek() ?? '');
  const { of, unit } = row;
  const { value } = amount;
  const clear = () => amount.setText('');
  const use = () => {
    if (value !== undefined)
      api.doAct('useStock', { of, amount: value, job: job === '' ? undefined : job, note: '' }, clear);
  };
  const keep = () => {
    if (value !== undefined && job !== '') api.doAct('keepStock', { job, of, amount: value }, clear);
  };
  return (
    <section>
      <h3>Use some, or keep it for a job</h3>
      <Fields>
        <AmountField label="Amount" unit={unit} amount={amount} />
        <PickOne label="Job" value={job} options={jobOptions(context.records, 'no job')} choose={setJob} />
      </Fields>
      <Buttons>
        <Button disabled={value === undefined || job === ''} onClick={keep}>
          Keep for {job === '' ? 'a job' : job}
        </Button>
        <Button look="main" disabled={value === undefined} onClick={use}>
          Use
        </Button>
      </Buttons>
    </section>
  );
}

/** Both say why the store is not as the book has it. */
function CountOrWaste({ row, context, api }: RowParts) {
  const amount = useAmount(row, context, 0);
  const [why, setWhy] = useState('');
  const { of, unit } = row;
  const { value } = amount;
  const clear = () => {
    amount.setText('');
    setWhy('');
  };
  const ready = value !== undefined && why.trim() !== '';
  const count = () => {
    if (value !== undefined) api.doAct('countStock', { of, amount: value, note: why.trim() }, clear);
  };
  const waste = () => {
    if (value !== undefined && value > 0) api.doAct('wasteStock', { of, amount: value, note: why.trim() }, clear);
  };
  return (
    <section>
      <h3>Count it, or write some off</h3>
      <Fields>
        <AmountField label="Counted or lost" unit={unit} amount={amount} />
        <TextField label="Why" hint="as: a bag was torn" text={why} typing={setWhy} />
      </Fields>
      <Buttons>
        <Button disabled={!ready || value === 0} onClick={waste}>
          Write it off
        </Button>
        <Button disabled={!ready} onClick={count}>
          That is what lies there
        </Button>
      </Buttons>
    </section>
  );
}

/** Figures in the unit of the goods; nothing written is no level. */
function LeastLevel({ row, context, api }: RowParts) {
  const { of, unit, least, upTo } = row;
  if (!context.records.material.has(of)) return null;
  const set = (levels: { readonly least: number | null; readonly upTo: number | null }) =>
    api.doAct('setLeast', { material: of, ...levels });
  return (
    <section>
      <h3>Kept in store</h3>
      <Fields>
        <Level
          name="Least"
          value={least}
          unit={unit}
          context={context}
          put={(to) => set({ least: to ?? null, upTo: to === undefined ? null : (upTo ?? null) })}
        />
        {least !== undefined && (
          <Level
            name="Fill up to"
            value={upTo}
            unit={unit}
            context={context}
            put={(to) => set({ least, upTo: to ?? null })}
          />
        )}
      </Fields>
    </section>
  );
}

interface LevelParts {
  readonly name: string;
  readonly value: number | undefined;
  readonly unit: string;
  readonly context: BookContext;
  readonly put: (value: number | undefined) => string | undefined;
}

function Level({ name, value, unit, context: { display }, put }: LevelParts) {
  const text = value === undefined ? '' : String(cleanNoise(value));
  const settle = (typed: string) => {
    const read = said(readMeasure(typed, { name, stored: unit, low: 0, mayBeEmpty: true }, display));
    return read.ok ? put(read.value) : read.fault;
  };
  return (
    <SettledField
      label={name}
      unit={unit === 'each' ? '' : unit}
      figure
      text={display.decimalComma ? text.replace('.', ',') : text}
      settle={settle}
    />
  );
}
