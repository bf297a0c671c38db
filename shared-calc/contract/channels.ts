import { z } from 'zod';
import { ChangeSchema, RecordListsSchema } from './change-schema.ts';

/** A refusal as it crosses the bridge: the sentence for the person, and whether the page must read the book again. */
export const Refusal = z.strictObject({ says: z.string(), readAgain: z.boolean() });
export type Refusal = z.infer<typeof Refusal>;

export const BookInfo = z.strictObject({
  /** The file's name without its folder, and the whole path. */
  name: z.string(),
  path: z.string(),
  revision: z.int(),
  savedAt: z.string(),
  /** What *Undo* and *Redo* would take back or bring again; left out where there is nothing. */
  undo: z.string().optional(),
  redo: z.string().optional(),
  /** Sentences about the file that the person should know: a folder that a sync program touches, a tampered quote. */
  notices: z.array(z.string()),
  today: z.string(),
});
export type BookInfo = z.infer<typeof BookInfo>;

const Sums = z.strictObject({ column: z.string(), grossCoins: z.int().optional() });
const Backup = z.strictObject({ file: z.string(), day: z.string(), bytes: z.int() });
const DiffCount = z.strictObject({ kind: z.string(), added: z.int(), changed: z.int(), removed: z.int() });
const nothing = z.strictObject({});
const path = z.string().min(1).max(4_000);

/** Every channel between the page and the service: what goes in and what comes out. */
export const channels = {
  'book.read': { input: nothing, output: z.strictObject({ info: BookInfo, records: RecordListsSchema }) },
  'book.info': { input: nothing, output: BookInfo },
  'book.apply': {
    input: z.strictObject({ change: ChangeSchema, onRevision: z.int() }),
    output: BookInfo,
  },
  'book.undo': { input: nothing, output: z.strictObject({ info: BookInfo, change: ChangeSchema.optional() }) },
  'book.redo': { input: nothing, output: z.strictObject({ info: BookInfo, change: ChangeSchema.optional() }) },
  /** The service works the job's columns from what is stored, for the page to hold its own against. */
  'bench.confirm': {
    input: z.strictObject({ job: z.string(), revision: z.int() }),
    output: z.strictObject({ revision: z.int(), columns: z.array(Sums) }),
  },
  'quote.issue': {
    input: z.strictObject({ job: z.string(), onRevision: z.int() }),
    output: z.strictObject({ info: BookInfo, change: ChangeSchema }),
  },
  'file.recent': { input: nothing, output: z.strictObject({ paths: z.array(path) }) },
  'file.open': { input: z.strictObject({ path }), output: BookInfo },
  'file.new': { input: z.strictObject({ path, demo: z.boolean() }), output: BookInfo },
  'file.saveCopy': { input: z.strictObject({ path }), output: z.strictObject({ path }) },
  'file.backups': { input: nothing, output: z.strictObject({ backups: z.array(Backup) }) },
  'file.previewBackup': {
    input: z.strictObject({ file: z.string() }),
    output: z.strictObject({ differences: z.array(DiffCount) }),
  },
  'file.restore': { input: z.strictObject({ file: z.string() }), output: BookInfo },
} as const satisfies Record<string, { readonly input: z.ZodType; readonly output: z.ZodType }>;

export type Channel = keyof typeof channels;
export type Input<C extends Channel> = z.infer<(typeof channels)[C]['input']>;
export type Output<C extends Channel> = z.infer<(typeof channels)[C]['output']>;
