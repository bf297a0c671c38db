import { added, emptyChange, updated, type Added, type Change } from '#shared-calc/records/change.ts';
import type { RecordKind, RecordOf } from '#shared-calc/records/records.ts';
import { sameData } from '#shared-calc/records/same-data.ts';

export function recordsAdded(label: string, records: readonly Added[]): Change {
  return { ...emptyChange(label), added: records };
}

interface Rewritten<K extends RecordKind> {
  readonly from: RecordOf<K>;
  readonly to: RecordOf<K>;
}

/** The change that rewrites one record; empty if nothing differs. */
export function recordChanged<K extends RecordKind>(label: string, kind: K, { from, to }: Rewritten<K>): Change {
  return sameData(from, to) ? emptyChange(label) : { ...emptyChange(label), updated: [updated(kind, from, to)] };
}

export function recordRemoved<K extends RecordKind>(label: string, kind: K, record: RecordOf<K>): Change {
  return { ...emptyChange(label), removed: [added(kind, record)] };
}

export function recordAdded<K extends RecordKind>(label: string, kind: K, record: RecordOf<K>): Change {
  return recordsAdded(label, [added(kind, record)]);
}

/** A record with some fields replaced: null removes a field, `undefined` leaves it. */
export function withFields<R extends object>(
  record: R,
  fields: { readonly [K in keyof R]?: R[K] | null | undefined },
): R {
  const next = { ...record };
  for (const [key, value] of Object.entries(fields)) {
    if (value === null) Reflect.deleteProperty(next, key);
    else if (value !== undefined) Reflect.set(next, key, value);
  }
  return next;
}
