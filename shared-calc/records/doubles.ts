import type { RecordFault } from './book-fault.ts';
import type { Change } from './change.ts';
import { allKinds, type RecordKind, type Records } from './records.ts';
import { once, onceGiven } from './references.ts';

type Fields = Readonly<Record<string, unknown>>;

/** A duplicate after a change: a cell written over twice, or two prices of a pack from one day. */
export function findDouble(next: Records, change: Change): RecordFault | undefined {
  for (const kind of allKinds) {
    const written = writtenIds(kind, change);
    if (written.size === 0) continue;
    for (const fields of once[kind] ?? []) {
      const fault = findDoubleOf(next[kind].values(), kind, fields, written);
      if (fault) return fault;
    }
    for (const fields of onceGiven[kind] ?? []) {
      const given = [...next[kind].values()].filter((record) => fieldOf(record, fields.at(-1)) !== undefined);
      const fault = findDoubleOf(given, kind, fields, written);
      if (fault) return fault;
    }
  }
  return undefined;
}

function writtenIds(kind: RecordKind, change: Change): ReadonlySet<string> {
  const added = change.added.filter((each) => each.kind === kind).map(({ record }) => record.id);
  const updated = change.updated.filter((each) => each.kind === kind).map(({ to }) => to.id);
  return new Set([...added, ...updated]);
}

function findDoubleOf(
  records: Iterable<Fields & { readonly id: string }>,
  kind: RecordKind,
  fields: readonly string[],
  written: ReadonlySet<string>,
): RecordFault | undefined {
  const firsts = new Map<string, string>();
  for (const record of records) {
    const key = keyOf(record, fields);
    const first = firsts.get(key);
    if (first === undefined) firsts.set(key, record.id);
    else if (written.has(record.id) || written.has(first)) return doubled(kind, [first, record.id], fields, written);
  }
  return undefined;
}

function doubled(
  kind: RecordKind,
  [first, second]: readonly [string, string],
  fields: readonly string[],
  written: ReadonlySet<string>,
): RecordFault {
  const [id, other] = written.has(second) ? [second, first] : [first, second];
  return { kind: 'there-already', record: { kind, id }, other: { kind, id: other }, fields };
}

function keyOf(record: Fields, fields: readonly string[]): string {
  return JSON.stringify(fields.map((field) => fieldOf(record, field) ?? null));
}

function fieldOf(record: Fields, field = ''): unknown {
  return record[field];
}
