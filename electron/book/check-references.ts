import type { EditFault, RecordName } from '#shared-calc/records/book-fault.ts';
import type { Change } from '#shared-calc/records/change.ts';
import { allKinds, type RecordKind, type Records } from '#shared-calc/records/records.ts';
import { tables } from './tables/tables.ts';

type Fields = Readonly<Record<string, unknown>>;
type Written = { readonly kind: RecordKind; readonly record: Fields & { readonly id: string } };

/** A field that means a record of one of these kinds. */
export interface Reference {
  readonly field: string;
  readonly kinds: readonly RecordKind[];
}

/** The fields of a kind that mean other records. */
export function referencesOf(kind: RecordKind): readonly Reference[] {
  return Object.entries(tables[kind].refers).map(([field, kinds]) => ({ field, kinds }));
}

/** The id a record's reference means, if it means one. */
export function meantBy(record: Fields, { field }: Reference): string | undefined {
  const id = record[field];
  return typeof id === 'string' ? id : undefined;
}

/** What a change would leave without the record it means: `next` is the book after the change. */
export function findReferenceFault(next: Records, change: Change): EditFault | undefined {
  const written = [...change.added, ...change.updated.map(({ kind, to }) => ({ kind, record: to }))];
  return findLooseReference(next, written) ?? findStillUsed(next, change.removed);
}

/** The first of these records that means one which is not in the book. */
export function findLooseReference(records: Records, written: readonly Written[]): EditFault | undefined {
  for (const { kind, record } of written) {
    const loose = referencesOf(kind).find((reference) => isLoose(records, record, reference));
    if (loose)
      return { kind: 'unknown-reference', record: { kind, id: record.id }, ...loose, id: meantBy(record, loose) ?? '' };
  }
  return undefined;
}

function findStillUsed(next: Records, removed: readonly Written[]): EditFault | undefined {
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

function usersOf(next: Records, gone: RecordName): readonly RecordName[] {
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
