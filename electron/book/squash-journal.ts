import type Database from 'better-sqlite3';
import { z } from 'zod';
import { type Change, emptyChange } from '#shared-calc/records/change.ts';
import type { Records } from '#shared-calc/records/records.ts';
import type { BookState } from './book-state.ts';
import { rowSummer } from './checksums.ts';
import type { JournalStep } from './history.ts';

/** Edits that are squashed at one opening at most, so that no opening is slow; the next day's takes up the rest. */
const mostAtOnce = 5_000;

const Revision = z.int().nullable();

/**
 * Squashes the edits of the journal that were made before a day: one row stands for them, and neither undo nor the check
 * of the book goes back before it. Edits that issue a quote or touch a sold job stay as they were made, to be read.
 * Records are not touched. Returns how many edits are gone.
 */
export function squashJournal(state: BookState, before: string): number {
  return state.db.transaction(() => squash(state, before)).immediate();
}

function squash({ db, journal, present }: BookState, before: string): number {
  const now = present();
  if (!now.ok) return 0;
  const base = lastBase(db);
  const old = Revision.parse(
    db.prepare('SELECT min(revision) - 1 FROM journal WHERE revision > ? AND at >= ?').pluck().get(base, before),
  );
  const upTo = Math.min(old ?? now.value.revision, base + mostAtOnce);
  if (upTo <= base + 1) return 0;
  const cut = cutBefore(journal.allStepsAfter(base), upTo);
  const gone: number[] = [];
  for (let revision = base + 1; revision <= cut; revision += 1) {
    const change = journal.change(revision);
    // An edit that cannot be read is damage to be told of, and is not swept away.
    if (!change.ok) return 0;
    if (!staysToBeRead(change.value, now.value.records)) gone.push(revision);
  }
  const last = gone.pop();
  if (last === undefined || gone.length === 0) return 0;
  replaceBy(db, last, `${gone.length + 1} edits before ${before}`);
  remove(db, gone);
  return gone.length + 1;
}

function lastBase(db: Database.Database): number {
  const base = db.prepare("SELECT max(revision) FROM journal WHERE kind IN ('squash', 'accept')").pluck().get();
  return Revision.parse(base) ?? 0;
}

/**
 * The last revision up to `upTo` that no later undo or redo goes back before: what can be undone and redone of the later
 * edits is then the same without the earlier ones.
 */
export function cutBefore(steps: readonly JournalStep[], upTo: number): number {
  const means = meantBy(steps);
  let cut = upTo;
  for (let at = steps.length - 1; at >= 0; at -= 1) {
    const revision = steps[at]?.revision ?? 0;
    if (revision <= cut) break;
    cut = Math.min(cut, (means.get(revision) ?? revision) - 1);
  }
  return cut;
}

/** The edit that each undo and redo is of. */
function meantBy(steps: readonly JournalStep[]): ReadonlyMap<number, number> {
  const means = new Map<number, number>();
  let past: number[] = [];
  let future: number[] = [];
  for (const { kind, revision, lasting } of steps) {
    if (kind === 'undo' || kind === 'redo') {
      const [from, to] = kind === 'undo' ? [past, future] : [future, past];
      const meant = from.pop();
      if (meant === undefined) continue;
      means.set(revision, meant);
      to.push(meant);
    } else {
      if (lasting) past = [];
      else past.push(revision);
      future = [];
    }
  }
  return means;
}

/** Whether an edit issues a quote or touches a job that was sold, or what belongs to one. */
function staysToBeRead({ added, updated, removed }: Change, { job }: Records): boolean {
  const touched = [...added, ...removed, ...updated.map(({ kind, to }) => ({ kind, record: to }))];
  return touched.some(({ kind, record }) => {
    if (kind === 'issuedQuote') return true;
    const id = kind === 'job' ? record.id : 'job' in record ? record.job : undefined;
    return typeof id === 'string' && job.get(id)?.soldAs !== undefined;
  });
}

function replaceBy(db: Database.Database, revision: number, label: string): void {
  const replace = "UPDATE journal SET kind = 'squash', lasting = 1, label = ?, change = ? WHERE revision = ?";
  db.prepare(replace).run(label, JSON.stringify(emptyChange(label)), revision);
  rowSummer(db, 'journal')(String(revision));
}

function remove(db: Database.Database, revisions: readonly number[]): void {
  const drop = db.prepare('DELETE FROM journal WHERE revision = ?');
  const sum = rowSummer(db, 'journal');
  for (const revision of revisions) {
    drop.run(revision);
    sum(String(revision));
  }
}
