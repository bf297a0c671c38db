import type { z } from 'zod';
import { fieldsOf } from '#shared-calc/fields/record-fields.ts';
import type { RecordFault, FieldIssue, RecordName } from './book-fault.ts';
import type { Change } from './change.ts';
import { allKinds, recordKinds, type RecordKind, type RecordOf, type Records } from './records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { withoutUndefined } from './without-undefined.ts';

type Fields = Readonly<Record<string, unknown>>;
type Written = { readonly kind: RecordKind; readonly record: Fields & { readonly id: string } };
type Schemas = { readonly [K in RecordKind]: z.ZodType<RecordOf<K>> };
type Once = { readonly [K in RecordKind]?: readonly (readonly (keyof RecordOf<K> & string)[])[] };

/** The same schemas, by the record that each parses. */
const schemas: Schemas = recordKinds;

/** Fields that must be unique together in a book. */
export const once: Once = {
  packPrice: [['pack', 'from']],
  line: [['recipe', 'name']],
  localValue: [['job', 'size', 'line']],
  issuedQuote: [['number', 'revision']],
};

/** The same for records that have a value in the last of these fields. */
export const onceGiven: Once = {
  line: [['recipe', 'use']],
};

/** A field that refers to a record of one of these kinds. */
export interface Reference {
  readonly field: string;
  readonly kinds: readonly RecordKind[];
}

/** The fields of a kind that refer to other records. */
export function referencesOf(kind: RecordKind): readonly Reference[] {
  return fieldsOf(kind).flatMap(([field, { refers }]) => (refers ? [{ field, kinds: refers }] : []));
}

/** The id that a reference refers to, if any. */
export function meantBy(record: Fields, { field }: Reference): string | undefined {
  const id = record[field];
  return typeof id === 'string' ? id : undefined;
}

/** A record that a change leaves with a broken reference; `next` is the book after the change. */
export function findReferenceFault(next: Records, change: Change): RecordFault | undefined {
  const written = [...change.added, ...change.updated.map(({ kind, to }) => ({ kind, record: to }))];
  return findLooseReference(next, written) ?? findStillUsed(next, change.removed);
}

/** The first of these records that refers to one that is not in the book. */
export function findLooseReference(records: Records, written: readonly Written[]): RecordFault | undefined {
  for (const { kind, record } of written) {
    const loose = referencesOf(kind).find((reference) => isLoose(records, record, reference));
    if (loose)
      return { kind: 'unknown-reference', record: { kind, id: record.id }, ...loose, id: meantBy(record, loose) ?? '' };
  }
  return undefined;
}

function findStillUsed(next: Records, removed: readonly Written[]): RecordFault | undefined {
  for (const { kind, record } of removed) {
    const by = usersOf(next, { kind, id: record.id });
    if (by.length > 0) return { kind: 'still-used', record: { kind, id: record.id }, by };
  }
  return undefined;
}

function isLoose(next: Records, record: Fields, reference: Reference): boolean {
  const id = meantBy(record, reference);
  return id !== undefined && !reference.kinds.some((kind) => next[kind].has(id));
}

/** Records that refer to one that was removed from the book. */
export function usersOf(next: Records, gone: RecordName): readonly RecordName[] {
  return allKinds.flatMap((kind) =>
    referencesOf(kind)
      .filter(({ kinds }) => kinds.includes(gone.kind) && !kinds.some((other) => next[other].has(gone.id)))
      .flatMap((reference) => usersIn(next, kind, reference, gone.id)),
  );
}

function usersIn(next: Records, kind: RecordKind, reference: Reference, id: string): readonly RecordName[] {
  const users: RecordName[] = [];
  for (const record of next[kind].values()) if (meantBy(record, reference) === id) users.push({ kind, id: record.id });
  return users;
}

/** Parses a record from outside by its kind; a field that is `undefined` is dropped. */
export function parseRecord<K extends RecordKind>(
  kind: K,
  record: unknown,
): Result<RecordOf<K>, readonly FieldIssue[]> {
  const read = parseAs(kind, record);
  if (!read.ok) return read;
  const broken = Object.entries(read.value).find(([, value]) => hasBrokenText(value));
  if (broken) return failed([{ field: broken[0], code: 'broken-text', says: 'half a character' }]);
  return ok(withoutUndefined(read.value));
}

/** Parses a record by its kind, with its fields unchanged. */
export function parseAs<K extends RecordKind>(kind: K, record: unknown): Result<RecordOf<K>, readonly FieldIssue[]> {
  const read = schemas[kind].safeParse(record);
  if (read.success) return ok(read.data);
  return failed(read.error.issues.map(({ path, code, message }) => ({ field: path.join('.'), code, says: message })));
}

/** A lone half of a surrogate pair has no UTF-8 form: the file would return another text than was written. */
function hasBrokenText(value: unknown): boolean {
  if (typeof value === 'string') return !value.isWellFormed();
  if (typeof value !== 'object' || value === null) return false;
  return Object.entries(value).some(([key, each]) => hasBrokenText(key) || hasBrokenText(each));
}
