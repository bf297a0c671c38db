import { mapKinds, type RecordKind, type RecordOf, type Records } from './records.ts';
import { sameData } from './same-data.ts';

export type Added = { readonly [K in RecordKind]: { readonly kind: K; readonly record: RecordOf<K> } }[RecordKind];
/** A record before and after; the id stays. */
export type Updated = {
  readonly [K in RecordKind]: { readonly kind: K; readonly from: RecordOf<K>; readonly to: RecordOf<K> };
}[RecordKind];

/** A record with its kind, for a change. */
export function added<K extends RecordKind>(kind: K, record: RecordOf<K>): Added {
  return { kind, record } as unknown as Added;
}

/** A record of a kind before and after, for a change. */
export function updated<K extends RecordKind>(kind: K, from: RecordOf<K>, to: RecordOf<K>): Updated {
  return { kind, from, to } as unknown as Updated;
}

/** An edit as plain data: it can be applied, inverted, squashed, stored. */
export interface Change {
  /** What it does, for *Undo*: "drain gap of T08 to 15 mm". */
  readonly label: string;
  readonly added: readonly Added[];
  readonly updated: readonly Updated[];
  readonly removed: readonly Added[];
}

export function emptyChange(label: string): Change {
  return { label, added: [], updated: [], removed: [] };
}

export function isEmptyChange(change: Change): boolean {
  return change.added.length + change.updated.length + change.removed.length === 0;
}

/** The change that undoes this one. */
export function invertChange(change: Change): Change {
  return {
    label: change.label,
    added: change.removed,
    updated: change.updated.map(({ kind, from, to }) => updated(kind, to, from)),
    removed: change.added,
  };
}

/** The records after a change; untouched tables are the same objects as before. */
export function applyChange(records: Records, change: Change): Records {
  const next: Partial<Record<RecordKind, Map<string, unknown>>> = {};
  const table = (kind: RecordKind) => (next[kind] ??= new Map<string, unknown>(records[kind]));
  for (const { kind, record } of change.removed) table(kind).delete(record.id);
  for (const { kind, to } of change.updated) table(kind).set(to.id, to);
  for (const { kind, record } of change.added) table(kind).set(record.id, record);
  return mapKinds<Records>((kind) => next[kind] ?? records[kind]);
}

/** Several changes as one with the same effect, under one label. */
export function squashChanges(label: string, changes: readonly Change[]): Change {
  const first = new Map<string, Added | undefined>();
  const last = new Map<string, Added | undefined>();
  const note = (before: Added | undefined, after: Added | undefined) => {
    const any = before ?? after;
    if (!any) return;
    const key = `${any.kind} ${any.record.id}`;
    if (!first.has(key)) first.set(key, before);
    last.set(key, after);
  };
  for (const change of changes) {
    for (const each of change.removed) note(each, undefined);
    for (const { kind, from, to } of change.updated) note(added(kind, from), added(kind, to));
    for (const each of change.added) note(undefined, each);
  }
  return collect(label, first, last);
}

interface Collected {
  readonly label: string;
  readonly added: Added[];
  readonly updated: Updated[];
  readonly removed: Added[];
}

function collect(
  label: string,
  first: ReadonlyMap<string, Added | undefined>,
  last: ReadonlyMap<string, Added | undefined>,
): Change {
  const change: Collected = { label, added: [], updated: [], removed: [] };
  for (const [key, before] of first) {
    const after = last.get(key);
    if (!before && after) change.added.push(after);
    else if (before && !after) change.removed.push(before);
    else if (before && after && !sameData(before.record, after.record)) {
      change.updated.push(updated(before.kind, before.record, after.record));
    }
  }
  return change;
}
