import type { Book } from '#electron/book/book.ts';
import type { Step } from '#electron/book/history.ts';
import type { Entry, Input, Output, Refusal } from '#shared-calc/contract/channels.ts';
import type { BookFault, EditFault } from '#shared-calc/records/book-fault.ts';
import type { Change } from '#shared-calc/records/change.ts';
import { sameData } from '#shared-calc/records/same-data.ts';
import { ok } from '#shared-calc/result.ts';
import type { Result } from '#shared-calc/result.ts';

import type { Session } from './session.ts';
import { entriesAfter } from './entries-after.ts';
import { otherBook } from './read-acts.ts';
import { refuseBehind, refuseEdit } from './refuse.ts';

/** The answer of a writing call that may have had nothing to do. */
export type Written = Output<'book.undo'>;

type Act = (book: Book) => Result<Step | 'nothing', Refusal>;

export function applyChange(session: Session, input: Input<'book.apply'>): Result<Output<'book.apply'>, Refusal> {
  const { change, onRevision } = input;
  const done = write(session, input, (book) =>
    changesNothing(change) ? ok('nothing') : orRefuse(book.apply(change, onRevision)),
  );
  return done.ok ? ok({ info: done.value.info, others: done.value.others }) : done;
}

export function stepBack(session: Session, input: Input<'book.undo'>): Result<Written, Refusal> {
  return write(session, input, (book) => orRefuse(book.undo(input.onRevision)));
}

export function stepForward(session: Session, input: Input<'book.redo'>): Result<Written, Refusal> {
  return write(session, input, (book) => orRefuse(book.redo(input.onRevision)));
}

/** Writes, and returns what the page must apply to match the book: the edits of others, and this one. */
export function write(session: Session, made: Input<'book.undo'>, act: Act): Result<Written, Refusal> {
  if (!session.isCurrent(made.opening)) return refuseBehind(otherBook);
  const step = act(session.book());
  if (!step.ok) return step;
  if (step.value !== 'nothing') session.wrote();
  const entries = entriesAfter(session, made.onRevision);
  return entries.ok ? ok(writtenOf(session, entries.value, step.value)) : entries;
}

/** What the book refused, in words. */
export function orRefuse<T>(done: Result<T, EditFault | BookFault>): Result<T, Refusal> {
  return done.ok ? done : refuseEdit(done.fault);
}

function writtenOf(session: Session, entries: readonly Entry[], step: Step | 'nothing'): Written {
  const isOwn = ({ revision }: Entry) => step !== 'nothing' && revision === step.revision;
  const change = entries.find(isOwn)?.change;
  const others = entries.filter((entry) => !isOwn(entry));
  return { info: session.info().value, others, ...(change && { change }) };
}

/** A change equal to the stored records gets no revision. */
function changesNothing({ added, updated, removed }: Change): boolean {
  return added.length + removed.length === 0 && updated.every(({ from, to }) => sameData(from, to));
}
