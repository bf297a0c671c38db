import { z } from 'zod';

import { allKinds, recordKinds } from '#shared-calc/records/records.ts';
import type { RecordKind, RecordOf, Records } from '#shared-calc/records/records.ts';

/** A whole book as lists of records per kind, to go over the bridge. */
export type RecordLists = { readonly [K in RecordKind]: readonly RecordOf<K>[] };

export const RecordListsSchema = z.strictObject(
  Object.fromEntries(allKinds.map((kind) => [kind, z.array(recordKinds[kind])])),
) as unknown as z.ZodType<RecordLists>;

export function toRecordLists(records: Records): RecordLists {
  return Object.fromEntries(allKinds.map((kind) => [kind, [...records[kind].values()]])) as unknown as RecordLists;
}

/** The same back, by id. */
export function fromRecordLists(lists: RecordLists): Records {
  return Object.fromEntries(
    allKinds.map((kind) => [kind, new Map(lists[kind].map((record) => [record.id, record]))]),
  ) as unknown as Records;
}
