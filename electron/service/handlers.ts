import type { Channel } from '#shared-calc/contract/channel-names.ts';
import type { Input, Output, Refusal } from '#shared-calc/contract/channels.ts';
import { ok, type Result } from '#shared-calc/result.ts';

import { aboutProgram } from './about-program.ts';
import { confirmBench } from './confirm-bench.ts';
import type { Session } from './session.ts';
import { newBook, openKnown, putBack } from './file-acts.ts';
import { tellBooks } from './book-list.ts';
import { issueQuote } from './issue-quote.ts';
import { readBook, readSince } from './read-acts.ts';
import { openSalvage, putBackupInPlace, putFileAside, readRecovery } from './recovery-acts.ts';
import { previewBackup, restoreBackup, tellBackups } from './restore-acts.ts';
import type { Work } from './work.ts';
import { applyChange, stepBack, stepForward } from './write-acts.ts';

type Answer<C extends Channel> = Result<Output<C>, Refusal>;

/** One handler a channel; a channel without one does not compile. */
export type Handlers = { readonly [C in Channel]: (input: Input<C>) => Answer<C> | Work<Answer<C>> };

export function handlersOf(session: Session): Handlers {
  return {
    'book.read': () => readBook(session),
    'book.info': () => session.info(),
    'book.since': (input) => readSince(session, input),
    'book.apply': (input) => applyChange(session, input),
    'book.undo': (input) => stepBack(session, input),
    'book.redo': (input) => stepForward(session, input),
    'bench.confirm': ({ job }) => confirmBench(session, job),
    'quote.issue': (input) => issueQuote(session, input),
    'program.about': () => aboutProgram(session),
    'file.recent': () => ok(tellBooks(session)),
    'file.open': ({ book }) => openKnown(session, book),
    'file.new': (input) => newBook(session, input),
    'file.putBack': () => putBack(session),
    'file.backups': () => tellBackups(session),
    'file.previewBackup': ({ file }) => previewBackup(session, file),
    'file.restore': (input) => restoreBackup(session, input),
    'recovery.read': () => readRecovery(session),
    'recovery.restore': ({ file }) => putBackupInPlace(session, file),
    'recovery.salvage': () => openSalvage(session),
    'recovery.putAside': () => putFileAside(session),
  };
}
