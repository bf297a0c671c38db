import type { BookContext } from '#renderer/books/book-api.ts';
import { CurrencyField } from '#renderer/books/currency-field.tsx';
import { FieldEntry } from '#renderer/books/field-entry.tsx';
import { lackRoute } from '#renderer/frame/lack-route.ts';
import { writeRoute } from '#renderer/frame/place-route.ts';
import { Fields, SettledField } from '#renderer/kit/field.tsx';
import { Link } from '#renderer/kit/link.tsx';
import { Hint } from '#renderer/kit/note.tsx';
import type { JobApi } from '#renderer/store/job-api.ts';
import { sayMissingFigure } from '#shared-calc/buy/say-missing.ts';
import type { StartEntry, StartField } from '#shared-calc/derive/start-list.ts';
import { added, type Added } from '#shared-calc/records/change.ts';
import { freshRecord, putField } from '#shared-calc/records/edit-field.ts';
import type { RecordOf } from '#shared-calc/records/records.ts';
import { sayFieldFault } from '#shared-calc/words/say-field-fault.ts';
import { PriceRow } from './price-row.tsx';
import { FirstJob, NewSupplier, NewTank } from './start-records.tsx';

interface PartParts {
  readonly entry: StartEntry;
  readonly api: JobApi;
  readonly context: BookContext;
}

/** What an entry of the start list asks for, to be given there. */
export function StartPart({ entry, api, context }: PartParts) {
  switch (entry.id) {
    case 'currency':
      return <CurrencyField context={context} api={api} />;
    case 'margins':
      return <Margins entry={entry} api={api} context={context} />;
    case 'tank':
      return <NewTank api={api} context={context} />;
    case 'supplier':
      return <NewSupplier api={api} context={context} />;
    case 'job':
      return <FirstJob api={api} context={context} />;
    case 'recipe':
      return <Link href={writeRoute('recipe')}>Make a recipe in the recipe book</Link>;
    case 'prices':
    case 'measures':
      return <Lacking entry={entry} api={api} context={context} />;
    default:
      return <Given entry={entry} api={api} context={context} />;
  }
}

/** The fields of records that are in the book already, or of those that it must have. */
function Given({ entry: { fields }, api, context }: PartParts) {
  return (
    <Fields>
      {fields.map((field) => (
        <GivenField key={`${field.kind} ${field.id} ${field.key}`} field={field} api={api} context={context} />
      ))}
    </Fields>
  );
}

function GivenField({ field, api, context }: Omit<PartParts, 'entry'> & { readonly field: StartField }) {
  const { records } = context;
  const put = (input: Added) => api.doAct('put', input);
  switch (field.kind) {
    case 'workshop':
      return (
        <FieldEntry
          kind="workshop"
          record={context.workshop}
          field={field.key}
          context={context}
          put={(record) => put({ kind: 'workshop', record })}
        />
      );
    case 'rate': {
      const rate = records.rate.get(field.id) ?? freshRecord('rate', field.id, { label: 'Builder' });
      return (
        <FieldEntry
          kind="rate"
          record={rate}
          field="coins"
          label={rate.label}
          hint={rate.per === 'h' ? 'for each hour' : 'for each km'}
          context={context}
          put={(record) => put({ kind: 'rate', record })}
        />
      );
    }
    case 'margin':
      return <Share kind="margin" record={records.margin.get(field.id)} context={context} put={put} />;
    case 'taxClass':
      return <Share kind="taxClass" record={records.taxClass.get(field.id)} context={context} put={put} />;
  }
}

interface ShareParts<K extends 'margin' | 'taxClass'> {
  readonly kind: K;
  readonly record: RecordOf<K> | undefined;
  readonly context: BookContext;
  readonly put: (input: Added) => string | undefined;
}

function Share<K extends 'margin' | 'taxClass'>({ kind, record, context, put }: ShareParts<K>) {
  if (!record) return null;
  return (
    <FieldEntry
      kind={kind}
      record={record}
      field="share"
      label={record.label}
      context={context}
      put={(to) => put(added(kind, to))}
    />
  );
}

/** Margins by group, and one for all that have none yet. */
function Margins({ entry, api, context }: PartParts) {
  const { rules } = context;
  const open = entry.fields.flatMap(({ id }) =>
    rules.margins.filter((each) => each.id === id && each.share === undefined),
  );
  const setAll = (text: string) => {
    const read = open.map((record) => putField({ kind: 'margin', record, key: 'share', text }, context));
    const wrong = read.find((each) => !each.ok);
    if (wrong && !wrong.ok) return sayFieldFault(wrong.fault);
    const records = read.flatMap((each) => (each.ok ? [added('margin', each.value)] : []));
    return api.doAct('putAll', { records, label: `margin of ${text} for ${records.length} groups` });
  };
  return (
    <>
      {open.length > 1 && (
        <Fields>
          <SettledField
            label={`One for the ${open.length} not given yet`}
            text=""
            unit="%"
            figure
            settle={(text) => (text.trim() === '' ? undefined : setAll(text))}
          />
        </Fields>
      )}
      <Given entry={entry} api={api} context={context} />
    </>
  );
}

/** What an open job waits for: prices are written here, a measure at its tank or size. */
function Lacking({ entry: { missing }, api, context }: PartParts) {
  if (missing.length === 0) return <Hint>Nothing is missing that a job waits for.</Hint>;
  return (
    <>
      {missing.map((each) =>
        each.what === 'price' ? (
          <PriceRow key={each.of} of={each.of} label={each.label} api={api} context={context} />
        ) : (
          <p key={`${each.of} ${each.label}`}>
            <Link href={lackRoute(each, context.records)}>{sayMissingFigure(each)}</Link>
          </p>
        ),
      )}
    </>
  );
}
