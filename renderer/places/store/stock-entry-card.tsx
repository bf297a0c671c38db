import type { BookContext } from '#renderer/books/book-api.ts';
import { SettledField, Fields } from '#renderer/kit/field.tsx';
import { FieldEntry } from '#renderer/books/field-entry.tsx';
import { calledOf, headingOf } from '#shared-calc/fields/record-fields.ts';
import { Button } from '#renderer/kit/button.tsx';
import type { JobApi } from '#renderer/store/job-api.ts';
import { readMeasure } from '#shared-calc/read/read-measure.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import type { StockEntry } from '#shared-calc/records/records.ts';
import { openJobs } from './job-options.ts';
import { isHeld, isPast } from './store-rows.ts';
import css from './store.module.css';
import { said } from '#shared-calc/words/say-entry-fault.ts';

interface CardParts {
  readonly entry: StockEntry;
  readonly unit: string;
  readonly context: BookContext;
  readonly api: JobApi;
}

const fields = ['sealed', 'reservedFor', 'bestBefore', 'quarantineUntil', 'note'] as const;

/** One bag or shelf of a material; each of its figures can be corrected. */
export function StockEntryCard({ entry, unit, context, api }: CardParts) {
  const { records, display, today } = context;
  const putAmount = (text: string) => {
    const amount = said(readMeasure(text, { name: calledOf('stockEntry', 'amount'), stored: unit, low: 0 }, display));
    if (!amount.ok) return api.refuse(amount.fault);
    return api.doAct('correctEntry', { entry: entry.id, fields: { amount: amount.value } });
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
          label={headingOf('stockEntry', 'amount')}
          unit={unit === 'each' ? '' : unit}
          figure
          text={display.decimalComma ? amountText.replace('.', ',') : amountText}
          settle={putAmount}
        />
        {fields.map((field) => (
          <FieldEntry
            key={field}
            kind="stockEntry"
            record={entry}
            field={field}
            context={context}
            {...(field === 'reservedFor' && { options: openJobs(records) })}
            put={(to) => api.doAct('correctEntry', { entry: entry.id, fields: { [field]: to[field] ?? null } })}
          />
        ))}
      </Fields>
      <p>
        <Button look="plain" onClick={() => api.doAct('writeOff', { entry: entry.id })}>
          Remove this entry
        </Button>
      </p>
    </section>
  );
}
