import { z } from 'zod';

import { mapKinds, recordKinds } from '#shared-calc/records/records.ts';
import type { RecordKind, RecordOf, Records } from '#shared-calc/records/records.ts';

/** A whole book as lists of records per kind, to send over the bridge. */
export type RecordLists = { readonly [K in RecordKind]: readonly RecordOf<K>[] };

type RecordListShape = { readonly [K in RecordKind]: z.ZodArray<(typeof recordKinds)[K]> };

export const RecordListsSchema: z.ZodType<RecordLists> = z.strictObject(
  mapKinds<RecordListShape>((kind) => z.array(recordKinds[kind])),
);

export function toRecordLists(records: Records): RecordLists {
  return mapKinds<RecordLists>((kind) => [...records[kind].values()]);
}

/** The inverse: tables by id. */
export function fromRecordLists(lists: RecordLists): Records {
  return mapKinds<Records>((kind) => new Map(lists[kind].map((record) => [record.id, record])));
}
