import type { BookContext } from '#renderer/books/book-api.ts';
import { CurrencyField } from '#renderer/books/currency-field.tsx';
import { FieldEntry } from '#renderer/books/field-entry.tsx';
import { writeRoute } from '#renderer/frame/place-route.ts';
import { Fields, SettledField } from '#renderer/kit/field.tsx';
import { Link } from '#renderer/kit/link.tsx';
import { Hint } from '#renderer/kit/note.tsx';
import type { JobApi } from '#renderer/store/job-api.ts';
import type { Missing } from '#shared-calc/buy/missing.ts';
import { jobsThatLack, type StartEntry, type StartField } from '#shared-calc/derive/start-list.ts';
import { added, type Added } from '#shared-calc/records/change.ts';
import { freshRecord, putField } from '#shared-calc/records/edit-field.ts';
import type { RecordOf } from '#shared-calc/records/records.ts';
import { actNames } from '#shared-calc/words/act-names.ts';
import { sayFieldFault } from '#shared-calc/words/say-field-fault.ts';
import { FirstJob, NewSupplier, NewTank } from './start-records.tsx';

interface PartParts {
  readonly entry: StartEntry;
  readonly api: JobApi;
  readonly context: BookContext;
}

interface EntryParts extends PartParts {
  /** Unfolds the next entry, once the only thing that this one asks for is made. */
  readonly next: () => void;
}

/** What an entry of the start list asks for, to be given there. */
export function StartPart({ entry, api, context, next }: EntryParts) {
  switch (entry.id) {
    case 'currency':
      return <CurrencyField context={context} api={api} />;
    case 'margins':
      return <Margins entry={entry} api={api} context={context} />;
    case 'tank':
      return <NewTank api={api} context={context} done={next} />;
    case 'supplier':
      return <NewSupplier api={api} context={context} />;
    case 'job':
      return <FirstJob api={api} context={context} done={next} />;
    case 'recipe':
      return <Recipes context={context} />;
    case 'prices':
      return <LackedPrices missing={entry.missing} context={context} />;
    case 'measures':
      return <LackedMeasures missing={entry.missing} context={context} />;
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
          {...(field.key === 'name' && { label: 'Name of the workshop' })}
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

/** Margins by group, and one for all groups that have none yet, also those that no recipe has lines in so far. */
function Margins({ entry, api, context }: PartParts) {
  const open = context.rules.margins.filter(({ share }) => share === undefined);
  const setAll = (text: string) => {
    if (text.trim() === '' || open.length === 0) return undefined;
    const read = open.map((record) => putField({ kind: 'margin', record, key: 'share', text }, context));
    const wrong = read.find((each) => !each.ok);
    if (wrong && !wrong.ok) return sayFieldFault(wrong.fault);
    const records = read.flatMap((each) => (each.ok ? [added('margin', each.value)] : []));
    return api.doAct('putAll', { records, label: `margin of ${text} for ${records.length} groups` });
  };
  return (
    <>
      <Fields>
        <SettledField label="One for all not given yet" text="" unit="%" figure settle={setAll} />
      </Fields>
      <Given entry={entry} api={api} context={context} />
    </>
  );
}

/** Answers to questions make a recipe, and lead back here. */
function Recipes({ context: { records } }: Pick<PartParts, 'context'>) {
  if (records.recipe.size > 0) return <Link href={writeRoute('recipe')}>See them in the recipe book</Link>;
  return <Link href={writeRoute('recipe', 'new')}>{actNames.newRecipe}: answer which layers, depths and fittings</Link>;
}

interface LackedParts extends Pick<PartParts, 'context'> {
  readonly missing: readonly Missing[];
}

const nothingLacks = <Hint>Nothing is missing that a job waits for.</Hint>;
const noJobYet = <Hint>The first job says what it needs: give its tank, recipe and job first.</Hint>;

/** Prices and measurements are typed or pasted as a column in their grids. */
function LackedPrices({ missing, context }: LackedParts) {
  if (missing.length === 0) return context.records.size.size === 0 ? noJobYet : nothingLacks;
  const href = writeRoute('prices', ...jobsThatLack(context));
  return <InGrid missing={missing} href={href} names={['price', 'prices']} />;
}

function LackedMeasures({ missing, context }: LackedParts) {
  if (missing.length === 0) return context.records.size.size === 0 ? noJobYet : nothingLacks;
  const href = writeRoute('measures', ...jobsThatLack(context));
  return <InGrid missing={missing} href={href} names={['measurement', 'measurements']} />;
}

/** The grid has them all. */
const MOST_NAMES = 12;

interface GridParts extends Pick<LackedParts, 'missing'> {
  readonly href: string;
  readonly names: readonly [one: string, several: string];
}

function InGrid({ missing, href, names: [one, several] }: GridParts) {
  const labels = missing.slice(0, MOST_NAMES).map(({ label }) => label);
  const more = missing.length - labels.length;
  return (
    <>
      <p>
        <Link href={href}>
          {missing.length === 1 ? `Write the ${one}` : `Write the ${missing.length} ${several}`} in their grid, or paste
          a column
        </Link>
      </p>
      <Hint>{`${labels.join('; ')}${more > 0 ? `; and ${more} more` : ''}.`}</Hint>
    </>
  );
}
