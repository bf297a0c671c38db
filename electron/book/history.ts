import type { Change } from '#shared-calc/records/change.ts';

/** An edit that can be undone or redone: the revision that made it, and its label. */
export interface Step {
  readonly revision: number;
  readonly label: string;
}

/**
 * `squash` stands for all edits before it that are no longer kept, `accept` for a book that was taken as it stood
 * although its journal or its checksums said otherwise.
 */
export const journalKinds = ['begin', 'migrate', 'squash', 'accept', 'do', 'undo', 'redo'] as const;
export type JournalKind = (typeof journalKinds)[number];

/** A row of the journal without what it changed. */
export interface JournalStep extends Step {
  readonly kind: JournalKind;
  /** Cannot be undone: an issue, the first records, a migration, the last of the squashed edits. */
  readonly lasting: boolean;
}

/** A row of the journal with what it changed in the book; for an undo, that is the inverse edit. */
export interface JournalEntry extends JournalStep {
  readonly change: Change;
}

export interface History {
  readonly past: readonly Step[];
  readonly future: readonly Step[];
  /** The row that undo stops at when `past` is empty. */
  readonly wall: JournalStep | undefined;
}

export const noHistory: History = { past: [], future: [], wall: undefined };

/** What can be undone and redone after these further rows of the journal. */
export function foldHistory(history: History, rows: readonly JournalStep[]): History {
  const last = rows.findLastIndex((row) => row.lasting);
  const past = last < 0 ? [...history.past] : [];
  const future = last < 0 ? [...history.future] : [];
  for (const row of rows.slice(last + 1)) fold(past, future, row);
  return { past, future, wall: rows[last] ?? history.wall };
}

function fold(past: Step[], future: Step[], { kind, revision, label }: JournalStep): void {
  if (kind === 'undo') move(past, future);
  else if (kind === 'redo') move(future, past);
  else {
    past.push({ revision, label });
    future.length = 0;
  }
}

function move(from: Step[], to: Step[]): void {
  const step = from.pop();
  if (step) to.push(step);
}
