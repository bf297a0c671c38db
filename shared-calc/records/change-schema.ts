import { z } from 'zod';
import type { Added, Change } from './change.ts';
import { allKinds, recordKinds, type RecordKind } from './records.ts';

type Several<T> = readonly [T, ...T[]];

const single = allKinds.map((kind) => z.strictObject({ kind: z.literal(kind), record: recordKinds[kind] }));
const paired = allKinds.map((kind) =>
  z.strictObject({ kind: z.literal(kind), from: recordKinds[kind], to: recordKinds[kind] }),
);
const One = z.discriminatedUnion('kind', single as unknown as Several<(typeof single)[number]>);
const Pair = z.discriminatedUnion('kind', paired as unknown as Several<(typeof paired)[number]>);

/** A record with its kind, as it comes from outside. */
export const AddedSchema = One as unknown as z.ZodType<Added>;

export const KindSchema = z.enum(Object.keys(recordKinds) as [RecordKind, ...RecordKind[]]);

/** A `Change` as it comes from a page, a file or a journal. */
export const ChangeSchema = z.strictObject({
  label: z.string(),
  added: z.array(One),
  updated: z.array(Pair),
  removed: z.array(One),
}) as unknown as z.ZodType<Change>;
