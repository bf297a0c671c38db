import { z } from 'zod';
import { wordsOfKind } from '#shared-calc/fields/kind-names.ts';
import { fieldsOf } from '#shared-calc/fields/record-fields.ts';
import { putRecords } from '#shared-calc/jobs/put-records.ts';
import { WORK_GROUP } from '#shared-calc/price/quote-rules.ts';
import { lineById } from '#shared-calc/recipe/lines-of.ts';
import type { RecordName } from '#shared-calc/records/book-fault.ts';
import { AddedSchema, KindSchema } from '#shared-calc/records/change-schema.ts';
import {
  added,
  applyChange,
  emptyChange,
  squashChanges,
  type Added,
  type Change,
} from '#shared-calc/records/change.ts';
import { misfitOf } from '#shared-calc/records/misfit.ts';
import type { Difference, Line, RecordKind, Records } from '#shared-calc/records/records.ts';
import { meantBy, referencesOf, usersOf } from '#shared-calc/records/references.ts';
import { sameData } from '#shared-calc/records/same-data.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { act } from './act.ts';
import type { ActFault, Need } from './act-fault.ts';
import { findRecord } from './find-record.ts';
import { needsOf } from './line-breaks.ts';
import { familyFault } from './family-check.ts';
import { lineFault } from './line-fault.ts';
import { linesWritten } from './line-changes.ts';
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

const Label = z.string().min(1).max(300).optional().describe('What Undo calls it.');
const PutAll = z.strictObject({ records: z.array(AddedSchema).min(1), label: Label });

export const putAll = act<z.infer<typeof PutAll>>({
  name: 'putAll',
  says: 'Adds or replaces several records in one step, all of them or none.',
  input: PutAll,
  run: ({ records }, { records: asked, label }) => {
    let now = records;
    const changes: Change[] = [];
    for (const each of asked) {
      const fault = putFault(now, each);
      if (fault) return failed(fault);
      const change = putRecord(now, each);
      // Lines are checked against each other, codes of goods against those of other goods.
      if (['line', 'recipe', 'difference', 'tank', 'material', 'plant'].includes(each.kind))
        now = applyChange(now, change);
      changes.push(change);
    }
    const [only] = changes;
    const says = changes.length === 1 && only ? only.label : `${changes.length} records`;
    return ok(squashChanges(label ?? says, changes));
  },
});

function putRecord(records: Records, { kind, record }: Added): Change {
  if (kind === 'line') return linePut(records, record);
  const from = records[kind].get(record.id);
  if (!from) return recordAdded(`${wordsOfKind(kind)} ${record.id} added`, kind, record);
  const name = kind === 'workshop' ? 'the workshop' : record.id;
  return recordChanged(`${changedFields(kind, from, record)} of ${name}`, kind, { from, to: record });
}

/** A line that its recipe inherits becomes a difference. */
function linePut(records: Records, line: Line): Change {
  const from = lineById(records, line.id);
  const label = from ? `${changedFields('line', from, line)} of ${line.id}` : `line ${line.id} added`;
  return linesWritten(records, label, [line]);
}

/** Headings of the fields that differ between two records. */
function changedFields(kind: RecordKind, from: object, to: object): string {
  const [before, after] = [from, to].map((record) => new Map<string, unknown>(Object.entries(record)));
  const changed = fieldsOf(kind).filter(([key]) => !sameData(before?.get(key), after?.get(key)));
  return changed.map(([, { heading }]) => heading.toLowerCase()).join(', ') || 'nothing';
}

/** Records that are written by acts of their own alone. */
function keptFault(record: RecordName): ActFault | undefined {
  switch (record.kind) {
    case 'issuedQuote':
      return { kind: 'issued', record };
    case 'done':
      return { kind: 'reason-stays', record };
    case 'houseChange':
      return { kind: 'house-log', record };
    case 'order':
    case 'move':
      return { kind: 'by-own-acts', record };
    default:
      return undefined;
  }
}

function putFault(records: Records, input: Added): ActFault | undefined {
  const { kind, record } = input;
  const kept = keptFault({ kind, id: record.id });
  if (kept) return kept;
  const from = kind === 'workshop' ? records.workshop.get('workshop')?.coinDecimals : undefined;
  if (kind === 'workshop' && from !== undefined && from !== record.coinDecimals)
    return { kind: 'coins-change', from, to: record.coinDecimals };
  if (kind === 'line') return lineFault(records, record);
  if (kind === 'difference') return differenceFault(records, record);
  return misfitOf(input, records);
}

/** A difference is of a line that its recipe has, and leaves all that inherit it readable. */
function differenceFault(records: Records, record: Difference): ActFault | undefined {
  const before = { ...records, difference: putRecords(records.difference, [], [record.id]) };
  const line = lineById(before, record.line);
  if (line?.recipe !== record.recipe) return { kind: 'no-record', record: { kind: 'line', id: record.line } };
  return familyFault(records, { ...records, difference: putRecords(records.difference, [record]) }, line);
}

const Name = z.strictObject({ kind: KindSchema, id: z.string() });

/** Removes a record and the records it owns; refused while another record refers to it. */
export const remove = act<z.infer<typeof Name>>({
  name: 'remove',
  says: 'Removes a record from the book with what belongs to it; refused while something else uses it.',
  input: Name,
  run: ({ records }, name) => removed(records, [name], `${wordsOfKind(name.kind)} ${name.id} removed`),
});

const RemoveAll = z.strictObject({ records: z.array(Name).min(1), label: Label });

export const removeAll = act<z.infer<typeof RemoveAll>>({
  name: 'removeAll',
  says: 'Removes several records in one step with what belongs to them, all of them or none.',
  input: RemoveAll,
  run: ({ records }, { records: names, label }) =>
    removed(records, names, label ?? `${names.map(({ id }) => id).join(', ')} removed`.slice(0, 300)),
});

function removed(records: Records, names: readonly RecordName[], label: string): Result<Change, ActFault> {
  for (const name of names) {
    const found = findRecord(records, name.kind, name.id);
    if (!found.ok) return found;
    const fault = removeFault(records, name);
    if (fault) return failed(fault);
  }
  const all = distinct(names.flatMap((name) => [name, ...ownedBy(records, name)]));
  const change = { ...emptyChange(label), removed: all.flatMap((each) => recordOf(records, each)) };
  const next = applyChange(records, change);
  for (const record of names) {
    const gone = [record, ...ownedBy(records, record)];
    const by = [...gone.flatMap((each) => usersOf(next, each)), ...naming(next, record)];
    if (by.length > 0) return failed({ kind: 'still-used', record, by: distinct(by) });
  }
  return ok(change);
}

/** Records that have no meaning without another record, and are removed with it. */
const owners: Readonly<Partial<Record<RecordKind, readonly RecordKind[]>>> = {
  material: ['pack'],
  tank: ['pack'],
  plant: ['pack'],
  pack: ['packPrice'],
  recipe: ['line', 'difference'],
  size: ['localValue', 'quoteLine'],
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

/**
 * Lines refer to a material by its code, which is not a reference in the file; nor is what a difference has of a line, or
 * the tanks it is for.
 */
function naming({ line, difference }: Records, { kind, id }: RecordName): readonly RecordName[] {
  const lines = kind === 'material' ? [...line.values()].filter(({ material }) => material === id) : [];
  const marks = [...difference.values()].filter(({ fields, for: tanks }) => {
    if (kind === 'tank') return tanks?.includes(id) === true;
    if (kind === 'material') return fields.material === id;
    return kind === 'rate' ? fields.who === id : kind === 'margin' && fields.group === id;
  });
  return [
    ...lines.map((each) => ({ kind: 'line' as const, id: each.id })),
    ...marks.map((each) => ({ kind: 'difference' as const, id: each.id })),
  ];
}

function distinct(names: readonly RecordName[]): readonly RecordName[] {
  const byKey = new Map(names.map((name) => [`${name.kind} ${name.id}`, name]));
  return [...byKey.values()];
}

/** Records that the program itself reads by id. */
const needed: Readonly<Record<string, Need>> = {
  'workshop workshop': { is: 'program', what: 'the book', why: 'a book has one workshop' },
  [`margin ${WORK_GROUP}`]: { is: 'program', what: 'the price of all work', why: 'its margin is this group' },
  'rate R-builder': { is: 'program', what: 'the price of every hour', why: 'hours are paid at this rate' },
  'rate R-overhead': { is: 'program', what: 'the price of every hour', why: 'hours bear this overhead' },
};

function removeFault(records: Records, record: RecordName): ActFault | undefined {
  const kept = keptFault(record);
  if (kept) return kept;
  const from = record.kind === 'line' ? records.line.get(record.id) : undefined;
  const need = needed[`${record.kind} ${record.id}`];
  const by = [...(need ? [need] : []), ...(from ? needsOf(records, from) : [])];
  return by.length > 0 ? { kind: 'needed', record, by } : undefined;
}
