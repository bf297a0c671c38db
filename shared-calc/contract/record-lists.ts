import { recordKinds, type RecordKind, type Records } from '#shared-calc/records/records.ts';
import type { RecordLists } from './change-schema.ts';

const kinds = Object.keys(recordKinds) as RecordKind[];

/** A book's records as lists, to go over the bridge. */
export function toRecordLists(records: Records): RecordLists {
  return Object.fromEntries(kinds.map((kind) => [kind, [...records[kind].values()]])) as unknown as RecordLists;
}

/** The same back, by id. */
export function fromRecordLists(lists: RecordLists): Records {
  return Object.fromEntries(
    kinds.map((kind) => [kind, new Map(lists[kind].map((record) => [record.id, record]))]),
  ) as unknown as Records;
}
