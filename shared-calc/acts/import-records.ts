import { fieldsOf, recordFields } from '#shared-calc/fields/record-fields.ts';
import type { CsvRow } from '#shared-calc/read/csv-rows.ts';
import { added, type Added, updated } from '#shared-calc/records/change.ts';
import { inOwnUnits } from '#shared-calc/quantity/shown-unit.ts';
import { displayOf } from '#shared-calc/records/display-of.ts';
import { freshRecord, putField, type FieldFault } from '#shared-calc/records/edit-field.ts';
import { parseField, type FieldContext } from '#shared-calc/records/field-text.ts';
import { misfitOf } from '#shared-calc/records/misfit.ts';
import { packId, packsOf } from '#shared-calc/buy/pack-prices.ts';
import type { RecordKind, RecordOf, Records } from '#shared-calc/records/records.ts';
import { sameData } from '#shared-calc/records/same-data.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { importList, type ListImport, type ReadRow, type RowFault } from './import-list.ts';

/** A row as it would be imported. */
export interface TakenRow {
  readonly row: number;
  readonly code: string;
  readonly is: 'new' | 'changed' | 'as it is';
  /** Headings whose value changes; for a new record, all headings that are filled in. */
  readonly touches: readonly string[];
}

interface RecordList<K extends RecordKind> {
  readonly kind: K;
  readonly many: string;
  /** Headings that a list of new records must have. */
  readonly needs: readonly string[];
  /** Heading of a material's packs, written as `10 L; 45 L`. */
  readonly packs?: string;
}

const packsHeading = recordFields.pack.amount.list ?? 'packs';

export const recordLists = {
  tank: { kind: 'tank', many: 'tanks', needs: ['shape', 'length', 'height'] },
  material: { kind: 'material', many: 'materials', needs: ['label', 'unit'], packs: packsHeading },
  supplier: { kind: 'supplier', many: 'suppliers', needs: ['name', 'lead'] },
  animalKind: { kind: 'animalKind', many: 'kinds of animal', needs: ['label'] },
} as const satisfies { readonly [K in RecordKind]?: RecordList<K> };

export type ListKind = keyof typeof recordLists;

/** The headings of a list: the code, then the required ones, then the others. */
export function listHeadings(kind: ListKind): {
  readonly needs: readonly string[];
  readonly others: readonly string[];
} {
  const list: RecordList<ListKind> = recordLists[kind];
  const [code = '', ...all] = fieldsOf(kind).flatMap(([, field]) => field.list ?? []);
  const others = all.filter((heading) => !list.needs.includes(heading));
  return { needs: [code, ...list.needs], others: list.packs === undefined ? others : [list.packs, ...others] };
}

/**
 * Reads a list of tanks, materials, suppliers or kinds of animal. A code that is in the book changes the fields that the list fills in;
 * any other code is a new record. An empty field changes nothing. A bare figure is in the field's stored unit.
 */
export function importRecords(kind: ListKind, text: string, records: Records): ListImport<TakenRow> {
  const workshop = workshopOf(records);
  const context = { records, workshop, display: inOwnUnits(displayOf(workshop)) };
  const { needs, others } = listHeadings(kind);
  const { many } = recordLists[kind];
  return importList(text, {
    many,
    label: `list of ${many}`,
    needs,
    known: [...needs, ...others],
    readRow: (row) => readRow(kind, row, context),
  });
}

function readRow<K extends ListKind>(
  kind: K,
  { row, fields }: CsvRow,
  context: FieldContext,
): Result<ReadRow<TakenRow>, RowFault> {
  const [codeHeading = '', ...needs] = listHeadings(kind).needs;
  const code = fields[codeHeading] ?? '';
  if (code === '') return failed({ kind: 'not-filled-in', heading: codeHeading });
  const table: ReadonlyMap<string, RecordOf<K>> = context.records[kind];
  const before = table.get(code);
  const filled = fillIn(kind, before ?? newRecord(kind, code), fields, context);
  if (!filled.ok) return failed({ kind: 'bad-field', code, fault: filled.fault });
  const heading = before ? undefined : needs.find((each) => !fields[each] && isNeeded(kind, each));
  if (heading !== undefined) return failed({ kind: 'not-filled-in', heading, code });
  const packs = newPacks(added(kind, filled.value.record), fields[packsHeading] ?? '', context);
  if (!packs.ok) return failed({ kind: 'bad-field', code, fault: packs.fault });
  return ok(rowOf(kind, before, { row, code, ...filled.value, packs: packs.value }));
}

interface RowParts<K extends RecordKind> extends FilledIn<K> {
  readonly row: number;
  readonly code: string;
  readonly packs: readonly Added[];
}

function rowOf<K extends RecordKind>(
  kind: K,
  before: RecordOf<K> | undefined,
  { row, code, record, touches, packs }: RowParts<K>,
): ReadRow<TakenRow> {
  const isOther = touches.length + packs.length > 0;
  const is = before === undefined ? 'new' : isOther ? 'changed' : 'as it is';
  const made = before === undefined ? [added(kind, record)] : [];
  const rewritten = before === undefined || sameData(before, record) ? [] : [updated(kind, before, record)];
  return {
    taken: { row, code, is, touches },
    id: record.id,
    called: code,
    change: { added: [...made, ...packs], updated: rewritten },
  };
}

/** A new tank may lack its measurements; every field that a record must have is filled in. */
function isNeeded(kind: ListKind, heading: string): boolean {
  return fieldsOf(kind).some(([, { list, mayBeEmpty }]) => list === heading && !mayBeEmpty);
}

function newRecord<K extends ListKind>(kind: K, code: string): RecordOf<K> {
  const record = freshRecord(kind, code);
  return kind === 'tank' ? { ...record, label: code } : record;
}

interface FilledIn<K extends RecordKind> {
  readonly record: RecordOf<K>;
  readonly touches: readonly string[];
}

/** The record with every field that the row fills in. */
function fillIn<K extends RecordKind>(
  kind: K,
  start: RecordOf<K>,
  fields: CsvRow['fields'],
  context: FieldContext,
): Result<FilledIn<K>, FieldFault> {
  const isNew = !context.records[kind].has(start.id);
  let record = start;
  const touches: string[] = [];
  const [, ...described] = fieldsOf(kind);
  for (const [key, { list: heading = '' }] of described) {
    const text = fields[heading] ?? '';
    if (text === '') continue;
    const next = putField({ kind, record, key, text }, context);
    if (!next.ok) return next;
    if (isNew || !sameData(next.value, record)) touches.push(heading);
    record = next.value;
  }
  const wrong = misfitOf(added(kind, record), context.records);
  return wrong ? failed(wrong) : ok({ record, touches });
}

/** Packs that a material does not have yet. */
function newPacks({ kind, record }: Added, text: string, context: FieldContext): Result<readonly Added[], FieldFault> {
  if (kind !== 'material') return ok([]);
  const amounts = new Set<number>();
  for (const part of text.split(/[;|]/).filter((each) => each.trim() !== '')) {
    const amount = parseField({ ...recordFields.pack.amount, unit: record.unit }, part, context);
    if (!amount.ok) return amount;
    if (typeof amount.value === 'number') amounts.add(amount.value);
  }
  const had = new Set(packsOf(context.records, record.id).map(({ amount }) => amount));
  const { id: material, supplier } = record;
  const sold = supplier === undefined ? { material } : { material, supplier };
  return ok(
    [...amounts]
      .filter((amount) => !had.has(amount))
      .map((amount) => added('pack', { id: packId(material, amount), ...sold, amount })),
  );
}
