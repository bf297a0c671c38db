import type { EntryFields } from '#shared-calc/acts/store-acts.ts';
import type { BookContext } from '#renderer/books/book-api.ts';
import { ChoiceField, SettledField, Fields } from '#renderer/kit/field.tsx';
import { readDay } from '#shared-calc/read/read-day.ts';
import { Button } from '#renderer/kit/button.tsx';
import type { JobApi } from '#renderer/store/job-api.ts';
import { readMeasure } from '#shared-calc/read/read-measure.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import type { StockEntry } from '#shared-calc/records/records.ts';
import { jobOptions } from './job-options.ts';
import { isHeld, isPast } from './store-rows.ts';
import css from './store.module.css';
import { said } from '#shared-calc/words/say-entry-fault.ts';

interface CardParts {
  readonly entry: StockEntry;
  readonly unit: string;
  readonly context: BookContext;
  readonly api: JobApi;
}

const sealedWords = [
  { value: 'sealed', label: 'sealed' },
  { value: 'opened', label: 'opened' },
];

/** One bag or shelf of a material; each of its figures can be corrected. */
export function StockEntryCard({ entry, unit, context, api }: CardParts) {
  const { records, display, today } = context;
  const put = (fields: EntryFields) => api.doAct('correctEntry', { entry: entry.id, fields });
  const putAmount = (text: string) => {
    const amount = said(readMeasure(text, { name: 'Amount', stored: unit, low: 0 }, display));
    return amount.ok ? put({ amount: amount.value }) : api.refuse(amount.fault);
  };
  const amountText = String(cleanNoise(entry.amount));
  return (
    <section class={css['stockEntry']}>
      <h3>
        {entry.sealed ? 'Sealed' : 'Opened'}
        {entry.reservedFor !== undefined && `, kept for ${entry.reservedFor}`}
        {isHeld(entry, today) && ', in quarantine'}
        {isPast(entry, today) && ', past its best'}
      </h3>
      <Fields>
        <SettledField
          label="Amount there"
          unit={unit === 'each' ? '' : unit}
          figure
          text={display.decimalComma ? amountText.replace('.', ',') : amountText}
          settle={putAmount}
        />
        <ChoiceField
          label="Pack"
          value={entry.sealed ? 'sealed' : 'opened'}
          options={sealedWords}
          choose={(word) => put({ sealed: word === 'sealed' })}
        />
        <ChoiceField
          label="Kept for"
          value={entry.reservedFor ?? ''}
          options={jobOptions(records, 'nobody')}
          choose={(job) => put({ reservedFor: job === '' ? null : job })}
        />
        <DayOf entry={entry} context={context} api={api} field="bestBefore" label="Best before" />
        <DayOf entry={entry} context={context} api={api} field="quarantineUntil" label="In quarantine until" />
        <SettledField label="Note" text={entry.note} settle={(note) => put({ note: note.trim() })} />
      </Fields>
      <p>
        <Button look="plain" onClick={() => api.doAct('writeOff', { entry: entry.id })}>
          Remove this entry
        </Button>
      </p>
    </section>
  );
}

interface DayParts extends Omit<CardParts, 'unit'> {
  readonly field: 'bestBefore' | 'quarantineUntil';
  readonly label: string;
}

function DayOf({ entry, context: { today }, api, field, label }: DayParts) {
  const settle = (text: string) => {
    const put = (day: string | null) => api.doAct('correctEntry', { entry: entry.id, fields: { [field]: day } });
    if (text.trim() === '') return put(null);
    const day = said(readDay(text, label, today));
    return day.ok ? put(day.value) : api.refuse(day.fault);
  };
  return <SettledField label={label} text={entry[field] ?? ''} settle={settle} />;
}
