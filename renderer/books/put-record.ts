import { emptyChange, type Added, type Change, updated } from '#shared-calc/records/change.ts';
import { recordKinds, type RecordKind, type RecordOf } from '#shared-calc/records/records.ts';
import { sameData } from '#shared-calc/records/same-data.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';

export function addRecords(label: string, records: readonly Added[]): Change {
  return { ...emptyChange(label), added: records };
}

export function removeRecords(label: string, removed: readonly Added[]): Change {
  return { ...emptyChange(label), removed };
}

export interface Rewritten<K extends RecordKind> {
  readonly from: RecordOf<K>;
  readonly to: RecordOf<K>;
}

/** Updates one record, checked against the book's rules; an unchanged record gives an empty change. */
export function updateRecord<K extends RecordKind>(
  label: string,
  kind: K,
  { from, to }: Rewritten<K>,
): Result<Change, string> {
  const read = recordKinds[kind].safeParse(to);
  if (!read.success) return failed(`This cannot be kept: ${read.error.issues[0]?.message ?? 'it is no such record'}.`);
  if (sameData(from, to)) return ok(emptyChange(label));
  return ok({ ...emptyChange(label), updated: [updated(kind, from, to)] });
}
