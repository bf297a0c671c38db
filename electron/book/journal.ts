import type Database from 'better-sqlite3';
import { z } from 'zod';
import type { StorageFault } from '#shared-calc/records/book-fault.ts';
import { ChangeSchema } from '#shared-calc/records/change-schema.ts';
import type { Change } from '#shared-calc/records/change.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { rowSummer } from './checksums.ts';
import { type JournalEntry, type JournalKind, journalKinds, type JournalStep } from './history.ts';
import { parseJson } from './parse-json.ts';

const Row = z.tuple([z.int(), z.enum(journalKinds), z.union([z.literal(0), z.literal(1)]), z.string()]);
const Last = z.int().nullable();
const select = 'SELECT revision, kind, lasting, label FROM journal';
const insert = 'INSERT INTO journal (revision, at, kind, lasting, label, change) VALUES (?, ?, ?, ?, ?, ?)';

export interface JournalRow {
  readonly revision: number;
  readonly at: string;
  readonly kind: JournalKind;
  readonly lasting: boolean;
  readonly change: Change;
}

export interface Journal {
  readonly revision: () => number;
  readonly append: (row: JournalRow) => void;
  readonly step: (revision: number) => JournalStep | undefined;
  readonly change: (revision: number) => Result<Change, StorageFault>;
  /** The rows after a revision, starting at the last row that cannot be undone: earlier rows do not matter for undo. */
  readonly stepsAfter: (revision: number) => readonly JournalStep[];
  readonly allStepsAfter: (revision: number) => readonly JournalStep[];
  readonly entriesAfter: (revision: number) => Result<readonly JournalEntry[], StorageFault>;
}

export function openJournal(db: Database.Database): Journal {
  const last = db.prepare('SELECT max(revision) FROM journal').pluck();
  const wall = db.prepare('SELECT max(revision) FROM journal WHERE lasting = 1').pluck();
  const add = db.prepare(insert);
  const one = db.prepare(`${select} WHERE revision = ?`).raw();
  const after = db.prepare(`${select} WHERE revision > ? ORDER BY revision`).raw();
  const sum = rowSummer(db, 'journal');
  const changeOf = db.prepare('SELECT change FROM journal WHERE revision = ?').pluck();
  const change = (revision: number) => parseChange(revision, changeOf.get(revision));
  return {
    revision: () => Last.parse(last.get()) ?? 0,
    append: ({ revision, at, kind, lasting, change: made }) => {
      add.run(revision, at, kind, Number(lasting), made.label, JSON.stringify(made));
      sum(String(revision));
    },
    step: (revision) => [one.get(revision)].filter((row) => row !== undefined).map(parseStep)[0],
    change,
    stepsAfter: (revision) => after.all(Math.max(revision, (Last.parse(wall.get()) ?? 0) - 1)).map(parseStep),
    allStepsAfter: (revision) => after.all(revision).map(parseStep),
    entriesAfter: (revision) => joinEntries(after.all(revision).map(parseStep), change),
  };
}

const Counted = z.object({ rows: z.int(), last: z.int().nullable(), base: z.int().nullable() });

/** Revisions start at 1, or at the last edit that was squashed or accepted, and have no gap from there on. */
export function findJournalGap(
  db: Database.Database,
): { readonly rows: number; readonly revision: number } | undefined {
  const base = "SELECT max(revision) FROM journal WHERE kind IN ('squash', 'accept')";
  const counted = `SELECT count(*) AS rows, max(revision) AS last, (${base}) AS base FROM journal
    WHERE revision >= ifnull((${base}), 1)`;
  const { rows, last, base: from } = Counted.parse(db.prepare(counted).get());
  const revision = last ?? 0;
  return rows === revision - (from ?? 1) + 1 ? undefined : { rows, revision };
}

/** Records a migration in the journal: edits made in an older form cannot be undone after it. */
export function noteMigration(db: Database.Database, name: string, at: string): void {
  db.prepare(
    `INSERT INTO journal (revision, at, kind, lasting, label, change)
     SELECT ifnull(max(revision), 0) + 1, ?, 'migrate', 1, ?, ? FROM journal`,
  ).run(at, name, JSON.stringify({ label: name, added: [], updated: [], removed: [] }));
}

function joinEntries(
  steps: readonly JournalStep[],
  changeOf: Journal['change'],
): Result<readonly JournalEntry[], StorageFault> {
  const entries: JournalEntry[] = [];
  for (const step of steps) {
    const change = changeOf(step.revision);
    if (!change.ok) return change;
    entries.push({ ...step, change: change.value });
  }
  return ok(entries);
}

function parseStep(row: unknown): JournalStep {
  const [revision, kind, lasting, label] = Row.parse(row);
  return { revision, kind, lasting: lasting === 1, label };
}

function parseChange(revision: number, text: unknown): Result<Change, StorageFault> {
  const read = ChangeSchema.safeParse(parseJson(text));
  if (read.success) return ok(read.data);
  return failed({ kind: 'damaged', damage: { what: 'journal', revision } });
}
