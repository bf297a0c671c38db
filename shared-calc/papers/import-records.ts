import { added, emptyChange, type Added, type Change, updated } from '#shared-calc/records/change.ts';
import { recordKinds, type RecordKind, type RecordOf, type Records } from '#shared-calc/records/records.ts';
import { sameData } from '#shared-calc/records/same-data.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { didYouMean } from '#shared-calc/rule/did-you-mean.ts';
import { readCsv, type CsvRow, type RefusedRow } from './csv-rows.ts';

/** One field of a list, under its heading: what is written there put into the record, or why not. */
export interface ImportField<R> {
  readonly heading: string;
  readonly put: (record: R, text: string) => Result<R, string>;
}

export interface ImportOf<K extends RecordKind> {
  readonly kind: K;
  /** What the list is of, for its label: "tanks". */
  readonly many: string;
  /** The heading that names the record, and the record it names. */
  readonly code: string;
  readonly find: (code: string) => RecordOf<K> | undefined;
  /** Headings without which a list of new records makes no sense. */
  readonly needed: readonly string[];
  readonly blank: (code: string) => RecordOf<K>;
  readonly fields: readonly ImportField<RecordOf<K>>[];
  /** What the record as a whole lacks, once all its fields are in. */
  readonly lacks?: (record: RecordOf<K>) => string | undefined;
  /** Records of other kinds that a row brings along. */
  readonly along?: ((record: RecordOf<K>, fields: CsvRow['fields']) => Result<readonly Added[], string>) | undefined;
}

/** A row as it would be taken in. */
export interface TakenRow {
  readonly row: number;
  readonly code: string;
  readonly is: 'new' | 'changed' | 'as it is';
  /** Headings whose figure or word is another than before; all that are filled in for a new one. */
  readonly touches: readonly string[];
}

export interface RecordImport {
  readonly taken: readonly TakenRow[];
  readonly refused: readonly RefusedRow[];
  /** Empty while any row is refused: nothing is half taken in. */
  readonly change: Change;
}

interface ReadRow<K extends RecordKind> {
  readonly told: TakenRow;
  readonly before: RecordOf<K> | undefined;
  readonly record: RecordOf<K>;
  readonly along: readonly Added[];
}

/**
 * Reads a list of records from CSV text. A code that is in the book is changed in the fields the list fills in, any
 * other is new; an empty field leaves what was there. Nothing is ever removed.
 */
export function importRecords<K extends RecordKind>(text: string, list: ImportOf<K>): RecordImport {
  const { rows, refused } = readCsv(text, [list.code, ...list.needed]);
  const faults = [...refused, ...strangeHeadings(rows, list)];
  const taken = new Map<string, ReadRow<K>>();
  for (const row of faults.length > refused.length ? [] : rows) {
    const read = readRow(row, list);
    if (!read.ok) faults.push({ row: row.row, says: read.fault });
    else if (taken.has(read.value.record.id))
      faults.push({ row: row.row, says: `${read.value.told.code} stands in the list twice.` });
    else taken.set(read.value.record.id, read.value);
  }
  if (rows.length === 0 && faults.length === 0) faults.push({ row: 1, says: `The file holds no ${list.many}.` });
  const all = [...taken.values()];
  return {
    taken: all.map(({ told }) => told),
    refused: faults.toSorted((a, b) => a.row - b.row),
    change: faults.length > 0 ? emptyChange(`list of ${list.many}`) : changeOf(all, list),
  };
}

function strangeHeadings<K extends RecordKind>(rows: readonly CsvRow[], list: ImportOf<K>): readonly RefusedRow[] {
  const known = [list.code, ...list.fields.map(({ heading }) => heading)];
  const strange = Object.keys(rows[0]?.fields ?? {}).filter((name) => !known.includes(name));
  return strange.map((name) => ({
    row: 1,
    says: `The heading "${name}" says nothing here.${didYouMean(name, known) || ` Known are ${known.join(', ')}.`}`,
  }));
}

function readRow<K extends RecordKind>({ row, fields }: CsvRow, list: ImportOf<K>): Result<ReadRow<K>, string> {
  const code = fields[list.code] ?? '';
  if (code === '') return failed(`The ${list.code} is empty.`);
  const before = list.find(code);
  const filled = fillIn(before ?? list.blank(code), fields, list);
  if (!filled.ok) return failed(`${code}: ${filled.fault}`);
  const { record, touches } = filled.value;
  const along = alongWith(record, fields, list);
  if (!along.ok) return failed(`${code}: ${along.fault}`);
  const isOther = touches.length + along.value.length > 0;
  const is = before === undefined ? 'new' : isOther ? 'changed' : 'as it is';
  return ok({ told: { row, code, is, touches }, before, record, along: along.value });
}

/** What a row brings along, once its record is one that a book keeps. */
function alongWith<K extends RecordKind>(
  record: RecordOf<K>,
  fields: CsvRow['fields'],
  { kind, lacks, along }: ImportOf<K>,
): Result<readonly Added[], string> {
  const says = lacks?.(record) ?? notKept(kind, record);
  if (says !== undefined) return failed(says);
  return along?.(record, fields) ?? ok([]);
}

interface FilledIn<K extends RecordKind> {
  readonly record: RecordOf<K>;
  readonly touches: readonly string[];
}

/** Every field that the row fills in put into the record. */
function fillIn<K extends RecordKind>(
  start: RecordOf<K>,
  fields: CsvRow['fields'],
  list: ImportOf<K>,
): Result<FilledIn<K>, string> {
  let record = start;
  const touches: string[] = [];
  for (const { heading, put } of list.fields) {
    const written = fields[heading] ?? '';
    if (written === '') continue;
    const next = put(record, written);
    if (!next.ok) return next;
    if (!sameData(next.value, record)) touches.push(heading);
    record = next.value;
  }
  return ok({ record, touches });
}

function notKept<K extends RecordKind>(kind: K, record: RecordOf<K>): string | undefined {
  return recordKinds[kind].safeParse(record).success ? undefined : 'it cannot be kept like this.';
}

function changeOf<K extends RecordKind>(rows: readonly ReadRow<K>[], { kind, many }: ImportOf<K>): Change {
  const made = rows.filter(({ before }) => before === undefined).map(({ record }) => added(kind, record));
  const rewritten = rows.flatMap(({ before, record }) =>
    before !== undefined && !sameData(before, record) ? [updated(kind, before, record)] : [],
  );
  return {
    label: `list of ${many}`,
    added: [...made, ...rows.flatMap(({ along }) => along)],
    updated: rewritten,
    removed: [],
  };
}

/** A supplier by its code or its name, in whatever letters. */
export function findSupplier(text: string, records: Pick<Records, 'supplier'>): Result<string, string> {
  const word = text.trim().toLowerCase();
  const found = [...records.supplier.values()].find(({ id, name }) =>
    [id.toLowerCase(), name.toLowerCase()].includes(word),
  );
  if (found) return ok(found.id);
  const near = didYouMean(
    text.trim(),
    [...records.supplier.values()].flatMap(({ id, name }) => [id, name]),
  );
  return failed(`no supplier called "${text.trim()}" in the book.${near}`);
}
