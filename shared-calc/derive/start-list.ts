import type { Missing } from '#shared-calc/buy/missing.ts';
import { lacksToIssue, termsNotGiven } from '#shared-calc/jobs/ready-to-issue.ts';
import { isBefore } from '#shared-calc/jobs/move-job.ts';
import { BUILDER, OVERHEAD } from '#shared-calc/price/hour-coins.ts';
import { WORK_GROUP } from '#shared-calc/price/quote-rules.ts';
import { findCurrency, currencyLabel } from '#shared-calc/quantity/currencies.ts';
import { recordFields } from '#shared-calc/fields/record-fields.ts';
import { showField } from '#shared-calc/records/field-text.ts';
import type { Workshop } from '#shared-calc/records/records.ts';
import type { Derived } from './derived.ts';

/** What a first quote asks for, what unblocks most first. */
export const startIds = [
  'units',
  'currency',
  'tax',
  'people',
  'margins',
  'terms',
  'tank',
  'recipe',
  'job',
  'supplier',
  'prices',
  'measures',
] as const;

export type StartId = (typeof startIds)[number];

/** A field of a record that is given in the list itself; the record may not be there yet. */
export type StartField =
  | { readonly kind: 'workshop'; readonly id: string; readonly key: keyof Workshop }
  | { readonly kind: 'rate'; readonly id: string; readonly key: 'coins' }
  | { readonly kind: 'margin' | 'taxClass'; readonly id: string; readonly key: 'share' };

export interface StartEntry {
  readonly id: StartId;
  readonly label: string;
  readonly state: 'done' | 'open';
  /** How many figures or choices it still needs. */
  readonly needs: number;
  /** What is given, or why it is asked. */
  readonly says: string;
  readonly fields: readonly StartField[];
  /** What a job waits for here, each by its label: prices and measures. */
  readonly missing: readonly Missing[];
}

/**
 * What is still missing for a first quote. Before any quote could be issued it has every entry; after that only those
 * that an open job waits for, so that it is empty where nothing is missing.
 */
export function startList(derived: Derived): readonly StartEntry[] {
  const lacking = openJobs(derived);
  const missing = [...new Map(lacking.flat().map((each) => [JSON.stringify(each), each])).values()];
  if (derived.records.issuedQuote.size === 0 && lacking.every(({ length }) => length > 0)) {
    return startIds.map((id) => entryOf(id, derived, missing));
  }
  const asked = new Set(missing.map(idOf));
  return startIds.filter((id) => asked.has(id)).map((id) => entryOf(id, derived, missing));
}

/** Jobs whose quote can be issued, nothing missing, before any was. */
export function readyForFirstQuote(derived: Derived): readonly string[] {
  const { issuedQuote, job } = derived.records;
  return issuedQuote.size > 0 ? [] : [...job.keys()].filter((id) => lackedBy(derived, id)?.length === 0);
}

/** Jobs whose quote cannot be issued yet for something that is missing. */
export function jobsThatLack(derived: Derived): readonly string[] {
  return [...derived.records.job.keys()].filter((id) => (lackedBy(derived, id)?.length ?? 0) > 0);
}

/** What each job lacks that can still be quoted. */
function openJobs(derived: Derived): readonly (readonly Missing[])[] {
  return [...derived.records.job.keys()].flatMap((id) => {
    const lacks = lackedBy(derived, id);
    return lacks ? [lacks] : [];
  });
}

/**
 * What a job's quote lacks; `undefined` if it has no size or is quoted no more. A job that cannot be worked for another
 * reason says so at its own place.
 */
export function lackedBy({ records, workshop, job }: Derived, id: string): readonly Missing[] | undefined {
  const state = records.job.get(id)?.state;
  const open = state !== undefined && isBefore(state, 'accepted') ? job(id) : undefined;
  if (!open || open.keys.length === 0) return undefined;
  const known = open.known();
  return known.ok ? lacksToIssue(known.value, workshop) : undefined;
}

/** The entry under which a missing figure is given. */
function idOf({ what, kind, of }: Missing): StartId {
  if (what === 'price') return 'prices';
  if (what === 'measure') return 'measures';
  if (kind === 'taxClass') return 'tax';
  if (kind === 'workshop') return of === 'currency' ? 'currency' : 'terms';
  return kind === 'margin' ? 'margins' : 'people';
}

const labels: Readonly<Record<StartId, string>> = {
  units: 'Units, dates and paper',
  currency: 'Currency',
  tax: 'Taxes',
  people: 'People and their hours',
  margins: 'Margins',
  terms: 'Name, terms and deposit',
  tank: 'First tank',
  recipe: 'Recipe',
  job: 'First job',
  supplier: 'Suppliers',
  prices: 'Prices',
  measures: 'Measurements',
};

type Part = Partial<Pick<StartEntry, 'fields' | 'missing' | 'says'>> & { readonly needs: number };

function entryOf(id: StartId, derived: Derived, missing: readonly Missing[]): StartEntry {
  const own = missing.filter((each) => idOf(each) === id);
  const { needs, says = '', ...part } = parts[id](derived, own);
  const state = needs === 0 && own.length === 0 ? 'done' : 'open';
  return { id, label: labels[id], state, needs: Math.max(needs, own.length), says, fields: [], missing: own, ...part };
}

const parts: Readonly<Record<StartId, (derived: Derived, own: readonly Missing[]) => Part>> = {
  units: (derived) => shopPart(derived.workshop, ['units', 'dateOrder', 'paper'], unitsSaid(derived)),
  currency: ({ workshop: { currency, coinDecimals } }) => ({
    needs: currency === '' ? 1 : 0,
    says: currency === '' ? '' : `${currencyName(currency)}, ${coinDecimals} decimals`,
  }),
  tax: ({ records }) => {
    const classes = [...records.taxClass.values()];
    const says = classes.flatMap(({ label, share }) => (share === undefined ? [] : `${label} ${percent(share)}`));
    return {
      needs: classes.length === 0 ? 1 : classes.filter(({ share }) => share === undefined).length,
      says: says.join(', '),
      fields: classes.map(({ id }) => ({ kind: 'taxClass', id, key: 'share' })),
    };
  },
  people: ({ records, rules }) => ({
    needs: rules.hour.notGiven.length,
    says: 'what an hour costs you; overhead comes on every hour',
    fields: [BUILDER, ...(records.rate.has(OVERHEAD) ? [OVERHEAD] : []), ...otherPeople(records)].map((id) => ({
      kind: 'rate',
      id,
      key: 'coins',
    })),
  }),
  margins: ({ records, rules }) => {
    const used = usedGroups(records);
    const asked = rules.margins.filter(({ id }) => used.has(id));
    return {
      needs: asked.filter(({ share }) => share === undefined).length,
      says: 'the share of the price that stays, by group of the quote',
      fields: asked.map(({ id }) => ({ kind: 'margin', id, key: 'share' })),
    };
  },
  terms: ({ workshop }) => {
    const needed = ['depositShare', 'contingencyShare', 'warrantyShare', 'plantLossShare'] as const;
    const open = needed.filter((key) => workshop[key] === undefined).length;
    const texts = termsNotGiven(workshop).filter(({ of }) => of !== 'currency').length;
    return {
      ...shopPart(
        workshop,
        ['name', 'terms', 'quoteValidDays', ...needed],
        'who quotes, what holds, and what is put aside',
      ),
      needs: open + texts,
    };
  },
  tank: ({ records: { tank } }) => countPart(tank.size, 'tank', 'inside sizes and the dam'),
  recipe: ({ records: { recipe } }) => countPart(recipe.size, 'recipe', 'which layers, mixes and kits a tank gets'),
  job: ({ records: { size } }) => countPart(size.size, 'size in jobs', 'what is quoted: a tank by a recipe'),
  supplier: ({ records: { supplier } }) => countPart(supplier.size, 'supplier', 'who sells what, and when it comes'),
  prices: lackedPart,
  measures: lackedPart,
};

/** What jobs lack is not known before there is one. */
function lackedPart(derived: Derived, own: readonly Missing[]): Part {
  const isKnown = openJobs(derived).length > 0;
  return isKnown ? { needs: own.length } : { needs: 1, says: 'which are missing is known with the first job' };
}

function shopPart(workshop: Workshop, keys: readonly (keyof Workshop)[], says: string): Part {
  const open = keys.filter((key) => workshop[key] === undefined || workshop[key] === '');
  return { needs: open.length, says, fields: keys.map((key) => ({ kind: 'workshop', id: workshop.id, key })) };
}

function countPart(count: number, one: string, why: string): Part {
  return { needs: count === 0 ? 1 : 0, says: count === 0 ? why : `${count} ${one}${count === 1 ? '' : 's'}` };
}

/** People whose hour a line of work names. */
function otherPeople({ line, rate }: Derived['records']): readonly string[] {
  const named = new Set([...line.values()].flatMap(({ who }) => who ?? []));
  return [...named].filter((who) => ![BUILDER, OVERHEAD].includes(who) && rate.has(who));
}

const TANK_GROUP = 'tank';

/** The groups that a quote of these recipes has lines in. */
function usedGroups({ line }: Derived['records']): ReadonlySet<string> {
  return new Set([TANK_GROUP, WORK_GROUP, ...[...line.values()].flatMap(({ group }) => group ?? [])]);
}

function unitsSaid(derived: Derived): string {
  const keys = ['units', 'dateOrder', 'paper'] as const;
  return keys
    .flatMap((key) => {
      const value = derived.workshop[key];
      return value === undefined ? [] : showField(recordFields.workshop[key], value, derived);
    })
    .join('; ');
}

function currencyName(currency: string): string {
  const known = findCurrency(currency);
  return known ? currencyLabel(known) : currency;
}

function percent(share: number): string {
  return `${Math.round(share * 10_000) / 100} %`;
}
