import { z } from 'zod';
import { wordsOfKind } from '#shared-calc/fields/kind-names.ts';
import { fieldsOf } from '#shared-calc/fields/record-fields.ts';
import { WORK_GROUP } from '#shared-calc/price/quote-rules.ts';
import type { RecordName } from '#shared-calc/records/book-fault.ts';
import { AddedSchema, KindSchema } from '#shared-calc/records/change-schema.ts';
import { added, applyChange, emptyChange, type Added, type Change } from '#shared-calc/records/change.ts';
import type { RecordKind, Records } from '#shared-calc/records/records.ts';
import { meantBy, referencesOf, usersOf } from '#shared-calc/records/references.ts';
import { sameData } from '#shared-calc/records/same-data.ts';
import { failed, ok } from '#shared-calc/result.ts';
import { act } from './act.ts';
import type { ActFault, Need } from './act-fault.ts';
import { findRecord } from './find-record.ts';
import { needsOf } from './line-breaks.ts';
import { lineFault } from './line-fault.ts';
import { recordAdded, recordChanged } from './record-changes.ts';

/** Adds a record to a book or replaces the one with its id. */
export const put = act<Added>({
  name: 'put',
  says: 'Adds a record to the book, or replaces the one of its kind with its id.',
  input: AddedSchema,
  run: ({ records }, input) => {
    const fault = putFault(records, input);
    return fault ? failed(fault) : ok(putRecord(records, input));
  },
});

function putRecord(records: Records, { kind, record }: Added): Change {
  const from = records[kind].get(record.id);
  if (!from) return recordAdded(`${wordsOfKind(kind)} ${record.id} added`, kind, record);
  const name = kind === 'workshop' ? 'the workshop' : record.id;
  return recordChanged(`${changedFields(kind, from, record)} of ${name}`, kind, { from, to: record });
}

/** Headings of the fields in which two records differ. */
function changedFields(kind: RecordKind, from: object, to: object): string {
  const [before, after] = [from, to].map((record) => new Map<string, unknown>(Object.entries(record)));
  const changed = fieldsOf(kind).filter(([key]) => !sameData(before?.get(key), after?.get(key)));
  return changed.map(([, { heading }]) => heading.toLowerCase()).join(', ') || 'nothing';
}

function putFault(records: Records, { kind, record }: Added): ActFault | undefined {
  if (kind === 'issuedQuote') return { kind: 'issued', record: { kind, id: record.id } };
  if (kind === 'closedDay' && record.from > record.to) {
    const says = `${record.to} lies before ${record.from}`;
    return { kind: 'not-valid', record: { kind, id: record.id }, issues: [{ field: 'to', code: 'backward', says }] };
  }
  const from = kind === 'workshop' ? records.workshop.get('workshop')?.coinDecimals : undefined;
  if (kind === 'workshop' && from !== undefined && from !== record.coinDecimals)
    return { kind: 'coins-change', from, to: record.coinDecimals };
  return kind === 'line' ? lineFault(records, record) : undefined;
}

const Remove = z.strictObject({ kind: KindSchema, id: z.string() });

/** Removes a record with what belongs to it; refused while another record names it. */
export const remove = act<z.infer<typeof Remove>>({
  name: 'remove',
  says: 'Removes a record from the book with what belongs to it; refused while something else uses it.',
  input: Remove,
  run: ({ records }, { kind, id }) => {
    const name = { kind, id };
    const found = findRecord(records, kind, id);
    if (!found.ok) return found;
    const fault = removeFault(records, name);
    if (fault) return failed(fault);
    const removed = [name, ...ownedBy(records, name)].flatMap((each) => recordOf(records, each));
    const change = { ...emptyChange(`${wordsOfKind(kind)} ${id} removed`), removed };
    const next = applyChange(records, change);
    const by = [
      ...removed.flatMap((each) => usersOf(next, { kind: each.kind, id: each.record.id })),
      ...naming(next, name),
    ];
    return by.length > 0 ? failed({ kind: 'still-used', record: name, by: distinct(by) }) : ok(change);
  },
});

/** What has no meaning without another record, and goes with it. */
const owners: Readonly<Partial<Record<RecordKind, readonly RecordKind[]>>> = {
  material: ['pack'],
  tank: ['pack'],
  pack: ['packPrice'],
  recipe: ['line'],
  size: ['localValue'],
};

function ownedBy(records: Records, owner: RecordName): readonly RecordName[] {
  return (owners[owner.kind] ?? []).flatMap((kind) => {
    const owned: RecordName[] = [];
    for (const record of records[kind].values()) {
      const names = referencesOf(kind).some(
        (reference) => reference.kinds.includes(owner.kind) && meantBy(record, reference) === owner.id,
      );
      if (names) owned.push({ kind, id: record.id });
    }
    return owned.flatMap((each) => [each, ...ownedBy(records, each)]);
  });
}

function recordOf(records: Records, { kind, id }: RecordName): readonly Added[] {
  const record = records[kind].get(id);
  return record ? [added(kind, record)] : [];
}

/** Lines name a material by its code, which no reference of the file holds. */
function naming({ line }: Records, { kind, id }: RecordName): readonly RecordName[] {
  if (kind !== 'material') return [];
  return [...line.values()].filter(({ material }) => material === id).map((each) => ({ kind: 'line', id: each.id }));
}

function distinct(names: readonly RecordName[]): readonly RecordName[] {
  const byKey = new Map(names.map((name) => [`${name.kind} ${name.id}`, name]));
  return [...byKey.values()];
}

/** Records that the program itself asks for by their ids. */
const needed: Readonly<Record<string, Need>> = {
  'workshop workshop': { is: 'program', what: 'the book', why: 'a book has one workshop' },
  [`margin ${WORK_GROUP}`]: { is: 'program', what: 'the price of all work', why: 'its margin is this group' },
  'rate R-builder': { is: 'program', what: 'the price of every hour', why: 'hours are paid at this rate' },
  'rate R-overhead': { is: 'program', what: 'the price of every hour', why: 'hours bear this overhead' },
};

function removeFault(records: Records, record: RecordName): ActFault | undefined {
  if (record.kind === 'issuedQuote') return { kind: 'issued', record };
  const from = record.kind === 'line' ? records.line.get(record.id) : undefined;
  const need = needed[`${record.kind} ${record.id}`];
  const by = [...(need ? [need] : []), ...(from ? needsOf(records, from) : [])];
  return by.length > 0 ? { kind: 'needed', record, by } : undefined;
}
