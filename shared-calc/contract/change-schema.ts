import { z } from 'zod';
import type { Change } from '#shared-calc/records/change.ts';
import { recordKinds, type RecordKind } from '#shared-calc/records/records.ts';

const kinds = Object.keys(recordKinds) as RecordKind[];

/** One of a list of shapes told apart by `kind`; the list is made from the table of record kinds. */
function perKind(shapeOf: (kind: RecordKind) => z.ZodRawShape): z.ZodType {
  const shapes = kinds.map((kind) => z.strictObject({ kind: z.literal(kind), ...shapeOf(kind) }));
  return z.discriminatedUnion('kind', shapes as [(typeof shapes)[number], ...typeof shapes]);
}

const record = perKind((kind) => ({ record: recordKinds[kind] }));
const update = perKind((kind) => ({ from: recordKinds[kind], to: recordKinds[kind] }));

/** A change as it comes from outside: every record in it whole and valid. */
export const ChangeSchema = z.strictObject({
  label: z.string().min(1).max(500),
  added: z.array(record).max(20_000),
  updated: z.array(update).max(20_000),
  removed: z.array(record).max(20_000),
}) as unknown as z.ZodType<Change>;

/** A whole book as lists of records per kind. */
export const RecordListsSchema = z.strictObject(
  Object.fromEntries(kinds.map((kind) => [kind, z.array(recordKinds[kind])])),
) as unknown as z.ZodType<RecordLists>;

export type RecordLists = { readonly [K in RecordKind]: readonly z.infer<(typeof recordKinds)[K]>[] };
