import type { RecordName } from '#shared-calc/records/book-fault.ts';
import { type Change, invertChange } from '#shared-calc/records/change.ts';
import { allKinds, type RecordKind, type Records } from '#shared-calc/records/records.ts';
import { sameData } from '#shared-calc/records/same-data.ts';
import type { JournalKind } from './history.ts';
import type { Journal } from './journal.ts';

export type JournalFinding =
  /** The journal up to `revision` does not lead to this record as it is now. */
  | { readonly kind: 'journal-differs'; readonly record: RecordName; readonly revision: number }
  | { readonly kind: 'journal-unreadable'; readonly revision: number };

const walls: readonly JournalKind[] = ['migrate', 'squash', 'accept'];

type State = ReadonlyMap<RecordKind, Map<string, unknown>>;

/**
 * Reverts the journal step by step from the current records: each row must leave what the next one found, and before
 * the first row there must be nothing. Stops at the last migration, because older records had another form,
 * and where the journal was squashed or accepted.
 */
export function replayBack(journal: Journal, records: Records): readonly JournalFinding[] {
  const state: State = new Map(allKinds.map((kind) => [kind, new Map<string, unknown>(records[kind])]));
  for (let revision = journal.revision(); revision > 0; revision -= 1) {
    const step = journal.step(revision);
    // A missing row is reported as a gap.
    if (!step || walls.includes(step.kind)) return [];
    const change = journal.change(revision);
    if (!change.ok) return [{ kind: 'journal-unreadable', revision }];
    const differing = findDiffering(state, change.value);
    if (differing.length > 0) return differing.map((record) => ({ kind: 'journal-differs', record, revision }));
    takeOn(state, invertChange(change.value));
  }
  return namesOf(state).map((record) => ({ kind: 'journal-differs', record, revision: 0 }));
}

function findDiffering(state: State, change: Change): readonly RecordName[] {
  const left = [...change.added, ...change.updated.map(({ kind, to }) => ({ kind, record: to }))];
  const wrong = left.filter(({ kind, record }) => !sameData(state.get(kind)?.get(record.id), record));
  const notGone = change.removed.filter(({ kind, record }) => state.get(kind)?.has(record.id));
  return [...wrong, ...notGone].map(({ kind, record }) => ({ kind, id: record.id }));
}

function takeOn(state: State, { added, updated, removed }: Change): void {
  for (const { kind, record } of removed) state.get(kind)?.delete(record.id);
  for (const { kind, to } of updated) state.get(kind)?.set(to.id, to);
  for (const { kind, record } of added) state.get(kind)?.set(record.id, record);
}

function namesOf(state: State): readonly RecordName[] {
  return [...state].flatMap(([kind, records]) => [...records.keys()].map((id) => ({ kind, id })));
}
