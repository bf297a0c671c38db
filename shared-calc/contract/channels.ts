import { z } from 'zod';
import { beginnings } from './beginnings.ts';

import { ChangeSchema, SentChangeSchema } from '#shared-calc/records/change-schema.ts';

import type { Channel } from './channel-names.ts';
import { RecordListsSchema } from './record-lists.ts';

/** A refusal as it crosses the bridge: the sentence for the person, and whether the page must read the book again. */
export const Refusal = z.strictObject({ says: z.string(), readAgain: z.boolean() });
export type Refusal = z.infer<typeof Refusal>;

/** What has happened to the open file, as a sentence, and what `file.putBack` would do. */
const Gone = z.strictObject({ says: z.string(), cure: z.enum(['put back', 'open what is there']) });

export const BookInfo = z.strictObject({
  /** Identifies this opening of the book; an edit made on another opening is refused. */
  opening: z.string(),
  /** The file's name without its folder, and the whole path. */
  name: z.string(),
  path: z.string(),
  revision: z.int(),
  /** When the book was last written, as an ISO 8601 time in UTC. */
  savedAt: z.string(),
  /** The labels of the next *Undo* and *Redo*; left out if there is none. */
  undo: z.string().optional(),
  redo: z.string().optional(),
  /** Sentences about the file that the person should know: a folder that a sync program changes, an altered quote. */
  notices: z.array(z.string()),
  /** `YYYY-MM-DD` */
  today: z.string(),
  /** Why the book is only looked at, as a sentence; left out where it is written too. */
  looking: z.string().optional(),
  /** Left out while all is well: the file has gone, so nothing more is written until it is put back. */
  gone: Gone.optional(),
});
export type BookInfo = z.infer<typeof BookInfo>;

/** One edit of the book from any window: its change, already inverted if the edit was an undo. */
export const Entry = z.strictObject({ revision: z.int(), change: ChangeSchema });
export type Entry = z.infer<typeof Entry>;

/** Sums of one column as if it were the job, in whole coins; the fault's sentence if there are none. */
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
const KnownBook = z.strictObject({ id: z.string(), name: z.string(), folder: z.string(), open: z.boolean() });
/** What a backup holds; left out where it cannot be read. `lastEdit` is an ISO 8601 time in UTC. */
const Contents = z.strictObject({ jobs: z.int(), tanks: z.int(), materials: z.int(), lastEdit: z.string() });
/** Counts of one kind: `came` from file and backup, `filled` of these from the backup. */
const Salvaged = z.strictObject({
  kind: z.string(),
  came: z.int(),
  filled: z.int(),
  lost: z.int(),
  altered: z.int(),
});
const backupFile = z.string().min(1).max(400);
/** What an edit was made on: the opening of the book, and the page's revision. */
const standing = { opening: z.string().max(100), onRevision: z.int().min(0) };
/** The result of a write: the page applies `others`, edits of other windows since its revision, then `change`. */
const written = { info: BookInfo, others: z.array(Entry) };

interface Contract {
  readonly input: z.ZodType;
  readonly output: z.ZodType;
}

/** The input and output of every channel between page and service. */
export const channels = {
  'book.read': { input: nothing, output: z.strictObject({ info: BookInfo, records: RecordListsSchema }) },
  'book.info': { input: nothing, output: BookInfo },
  /** Every edit after a revision, in order. */
  'book.since': {
    input: z.strictObject({ opening: standing.opening, revision: z.int().min(0) }),
    output: z.strictObject({ info: BookInfo, entries: z.array(Entry) }),
  },
  /** The page has already applied its own change, so it is not sent back. */
  'book.apply': { input: z.strictObject({ ...standing, change: SentChangeSchema }), output: z.strictObject(written) },
  /** `change` is left out if there was nothing to undo. Refused if the book has moved on from `onRevision`. */
  'book.undo': {
    input: z.strictObject(standing),
    output: z.strictObject({ ...written, change: ChangeSchema.optional() }),
  },
  'book.redo': {
    input: z.strictObject(standing),
    output: z.strictObject({ ...written, change: ChangeSchema.optional() }),
  },
  /** The service works out the job's columns from the stored book, and the page compares them with its own. */
  'bench.confirm': {
    input: z.strictObject({ job: z.string().max(120) }),
    output: z.strictObject({ revision: z.int(), columns: z.array(ColumnSums) }),
  },
  'quote.issue': {
    input: z.strictObject({
      ...standing,
      job: z.string().max(120),
      anyway: z.string().max(10_000).optional(),
      who: z.string().max(120).optional(),
    }),
    output: z.strictObject({ ...written, change: ChangeSchema.optional() }),
  },
  /** The log is left out if the program writes none. */
  'program.about': {
    input: nothing,
    output: z.strictObject({
      version: z.string(),
      format: z.int(),
      log: z.string().optional(),
      packages: z.array(z.strictObject({ name: z.string(), version: z.string(), licence: z.string() })),
    }),
  },
  /** The books to choose among: the open one, those opened last, those of the program's own folder. */
  'file.recent': { input: nothing, output: z.strictObject({ books: z.array(KnownBook) }) },
  /** `book` is the `id` of one that `file.recent` lists: no path comes from the page. */
  'file.open': { input: z.strictObject({ book: z.string().max(100) }), output: BookInfo },
  /** Makes a book of this name in the program's own folder. */
  'file.new': {
    input: z.strictObject({
      name: z.string().min(1).max(200),
      start: z.enum(beginnings),
      guesses: z.boolean().optional(),
    }),
    output: BookInfo,
  },
  /** Puts the file of the open book back where it was, or opens what was written over it. */
  'file.putBack': { input: nothing, output: BookInfo },
  'file.backups': { input: nothing, output: z.strictObject({ backups: z.array(Backup) }) },
  /** `file` is one that `file.backups` lists; `kept` is what stays although the backup does not have it. */
  'file.previewBackup': {
    input: z.strictObject({ file: backupFile }),
    output: z.strictObject({ differences: z.array(Difference), kept: z.array(z.string()) }),
  },
  'file.restore': {
    input: z.strictObject({ ...standing, file: backupFile }),
    output: z.strictObject({ ...written, change: ChangeSchema.optional() }),
  },
  /** Of a book that cannot be opened: why, its backups, newest first, and what its file still gives. */
  'recovery.read': {
    input: nothing,
    output: z.strictObject({
      name: z.string(),
      path: z.string(),
      says: z.string(),
      backups: z.array(Backup.extend({ holds: Contents.optional() })),
      salvage: z.strictObject({ kinds: z.array(Salvaged), knowsLost: z.boolean() }).optional(),
      isThere: z.boolean(),
    }),
  },
  /** Puts a backup in the place of the book that cannot be opened; what is there is put aside. */
  'recovery.restore': { input: z.strictObject({ file: backupFile }), output: BookInfo },
  /** Writes what the file still gives into a new book beside it, and opens that. */
  'recovery.salvage': { input: nothing, output: BookInfo },
  /** Gives the file that cannot be opened another name: this one. */
  'recovery.putAside': { input: nothing, output: z.strictObject({ aside: z.string() }) },
} as const satisfies Readonly<Record<Channel, Contract>>;

export type Input<C extends Channel> = z.infer<(typeof channels)[C]['input']>;
export type Output<C extends Channel> = z.infer<(typeof channels)[C]['output']>;
