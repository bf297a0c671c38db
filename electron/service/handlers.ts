import type { Channel } from '#shared-calc/contract/channel-names.ts';
import type { Input, Output, Refusal } from '#shared-calc/contract/channels.ts';
import type { Result } from '#shared-calc/result.ts';

import { confirmBench } from './confirm-bench.ts';
import type { Desk } from './desk.ts';
import { newBook, openOther, saveCopy } from './file-acts.ts';
import { issueQuote } from './issue-quote.ts';
import { readBook, readSince } from './read-acts.ts';
import { previewBackup, restoreBackup, tellBackups } from './restore-acts.ts';
import { applyChange, stepBack, stepForward } from './write-acts.ts';

/** One handler a channel; a channel without one does not compile. */
export type Handlers = { readonly [C in Channel]: (input: Input<C>) => Result<Output<C>, Refusal> };

export function handlersOf(desk: Desk): Handlers {
  return {
    'book.read': () => readBook(desk),
    'book.info': () => desk.info(),
    'book.since': (input) => readSince(desk, input),
    'book.apply': (input) => applyChange(desk, input),
    'book.undo': (input) => stepBack(desk, input),
    'book.redo': (input) => stepForward(desk, input),
    'bench.confirm': ({ job }) => confirmBench(desk, job),
    'quote.issue': (input) => issueQuote(desk, input),
    'file.recent': () => desk.recent(),
    'file.open': ({ path }) => openOther(desk, path),
    'file.new': (input) => newBook(desk, input),
    'file.saveCopy': (input) => saveCopy(desk, input),
    'file.backups': () => tellBackups(desk),
    'file.previewBackup': ({ file }) => previewBackup(desk, file),
    'file.restore': (input) => restoreBackup(desk, input),
  };
}
