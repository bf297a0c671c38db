import { z } from 'zod';
import { kindNames } from '#shared-calc/fields/kind-names.ts';
import { checkedList } from './checked-list.ts';
import type { Added, Change } from './change.ts';
import { mapKinds, recordKinds, type RecordKind } from './records.ts';

type Schemas = typeof recordKinds;
type Singles = { [K in RecordKind]: z.ZodObject<{ kind: z.ZodLiteral<K>; record: Schemas[K] }, z.core.$strict> };
type Pairs = {
  [K in RecordKind]: z.ZodObject<{ kind: z.ZodLiteral<K>; from: Schemas[K]; to: Schemas[K] }, z.core.$strict>;
};

const { workshop: single, ...singles } = mapKinds<Singles>((kind) =>
  z.strictObject({ kind: z.literal(kind), record: recordKinds[kind] }),
);
const { workshop: pair, ...pairs } = mapKinds<Pairs>((kind) =>
  z.strictObject({ kind: z.literal(kind), from: recordKinds[kind], to: recordKinds[kind] }),
);
const One = z.discriminatedUnion('kind', [single, ...Object.values(singles)]);
const Pair = z.discriminatedUnion('kind', [pair, ...Object.values(pairs)]);

export const AddedSchema: z.ZodType<Added> = One;

export const KindSchema = z.enum(kindNames);

/** A `Change` from a file or a journal. */
export const ChangeSchema: z.ZodType<Change> = z.strictObject({
  label: z.string(),
  added: z.array(One),
  updated: z.array(Pair),
  removed: z.array(One),
});

/** A `Change` from a page: its lists are read up to their first wrong record. */
export const SentChangeSchema: z.ZodType<Change> = z.strictObject({
  label: z.string().max(10_000),
  added: checkedList(One),
  updated: checkedList(Pair),
  removed: checkedList(One),
});
