import { z } from 'zod';

import { ChangeSchema } from '#shared-calc/records/change-schema.ts';

import type { Channel } from './channel-names.ts';
import { RecordListsSchema } from './record-lists.ts';

/** A refusal as it crosses the bridge: the sentence for the person, and whether the page must catch up with the book. */
export const Refusal = z.strictObject({ says: z.string(), readAgain: z.boolean() });
export type Refusal = z.infer<typeof Refusal>;

export const BookInfo = z.strictObject({
  /** Names this opening of the book; an edit made on another one is refused. */
  opening: z.string(),
  /** The file's name without its folder, and the whole path. */
  name: z.string(),
  path: z.string(),
  revision: z.int(),
  /** When the book was last written, as an ISO 8601 time in UTC. */
  savedAt: z.string(),
  /** What *Undo* and *Redo* would take back or bring again; left out where there is nothing. */
  undo: z.string().optional(),
  redo: z.string().optional(),
  /** Sentences about the file that the person should know: a folder that a sync program touches, an altered quote. */
  notices: z.array(z.string()),
  /** `YYYY-MM-DD` */
  today: z.string(),
});
export type BookInfo = z.infer<typeof BookInfo>;

/** One edit of the book, from whatever window: what it changed, for an undo the edit turned round. */
export const Entry = z.strictObject({ revision: z.int(), change: ChangeSchema });
export type Entry = z.infer<typeof Entry>;

/** Sums of one column as if it were the job, in whole coins; with the fault's sentence where there are none. */
const ColumnSums = z.strictObject({
  column: z.string(),
  sums: z
    .strictObject({
      costCoins: z.int(),
      netCoins: z.int(),
      grossCoins: z.int(),
      depositCoins: z.int(),
      hours: z.number(),
    })
    .optional(),
  fault: z.string().optional(),
});

const Backup = z.strictObject({ file: z.string(), day: z.string(), bytes: z.int() });
const Difference = z.strictObject({ kind: z.string(), added: z.int(), changed: z.int(), removed: z.int() });
const nothing = z.strictObject({});
const path = z.string().min(1).max(4_000);
const backupFile = z.string().min(1).max(400);
/** What an edit was made on: which opening of the book, and the revision that the page stood at. */
const standing = { opening: z.string().max(100), onRevision: z.int().min(0) };
/** What a writing call did: the page takes in `others`, edits of other windows since its revision, and then `change`. */
const written = { info: BookInfo, others: z.array(Entry) };

interface Contract {
  readonly input: z.ZodType;
  readonly output: z.ZodType;
}

/** What goes into every channel between page and service, and what comes out. */
export const channels = {
  'book.read': { input: nothing, output: z.strictObject({ info: BookInfo, records: RecordListsSchema }) },
  'book.info': { input: nothing, output: BookInfo },
  /** Every edit after a revision, in order. */
  'book.since': {
    input: z.strictObject({ opening: standing.opening, revision: z.int().min(0) }),
    output: z.strictObject({ info: BookInfo, entries: z.array(Entry) }),
  },
  /** The page has taken its own change in already; it is not sent back. */
  'book.apply': { input: z.strictObject({ ...standing, change: ChangeSchema }), output: z.strictObject(written) },
  /** `change` is left out where there was nothing to undo. Refused where the book has moved on from `onRevision`. */
  'book.undo': {
    input: z.strictObject(standing),
    output: z.strictObject({ ...written, change: ChangeSchema.optional() }),
  },
  'book.redo': {
    input: z.strictObject(standing),
    output: z.strictObject({ ...written, change: ChangeSchema.optional() }),
  },
  /** The service works the job's columns from what is stored, for the page to hold its own against. */
  'bench.confirm': {
    input: z.strictObject({ job: z.string().max(120) }),
    output: z.strictObject({ revision: z.int(), columns: z.array(ColumnSums) }),
  },
  'quote.issue': {
    input: z.strictObject({ ...standing, job: z.string().max(120) }),
    output: z.strictObject({ ...written, change: ChangeSchema.optional() }),
  },
  'file.recent': { input: nothing, output: z.strictObject({ paths: z.array(path) }) },
  'file.open': { input: z.strictObject({ path }), output: BookInfo },
  'file.new': { input: z.strictObject({ path, demo: z.boolean() }), output: BookInfo },
  /** Answers the path it was written to. A file that is there is replaced only where `replace` says so. */
  'file.saveCopy': {
    input: z.strictObject({ path, replace: z.boolean() }),
    output: z.strictObject({ path }),
  },
  'file.backups': { input: nothing, output: z.strictObject({ backups: z.array(Backup) }) },
  /** `file` is one of those that `file.backups` names; `kept` is what stays although the backup has it not. */
  'file.previewBackup': {
    input: z.strictObject({ file: backupFile }),
    output: z.strictObject({ differences: z.array(Difference), kept: z.array(z.string()) }),
  },
  'file.restore': {
    input: z.strictObject({ ...standing, file: backupFile }),
    output: z.strictObject({ ...written, change: ChangeSchema.optional() }),
  },
} as const satisfies Readonly<Record<Channel, Contract>>;

export type Input<C extends Channel> = z.infer<(typeof channels)[C]['input']>;
export type Output<C extends Channel> = z.infer<(typeof channels)[C]['output']>;
