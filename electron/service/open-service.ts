import type { Book } from '#electron/book/book.ts';
import { openBook } from '#electron/book/open-book.ts';
import { sayBookFault } from '#electron/book/say-book-fault.ts';
import { openOrMakeBook } from '#electron/book/seed-demo.ts';

import type { Channel } from '#shared-calc/contract/channel-names.ts';
import type { Refusal } from '#shared-calc/contract/channels.ts';
import type { News } from '#shared-calc/contract/news.ts';
import { failed, ok } from '#shared-calc/result.ts';
import type { Result } from '#shared-calc/result.ts';

import { answerCall, answerMeanwhile, stackOf } from './answer-call.ts';
import type { Log } from './answer-call.ts';
import { bookFiles, type BookFiles } from './book-files.ts';
import { openSession } from './session.ts';
import type { OpeningFault, Session, SessionOptions, UnopenedBook } from './session.ts';
import { wasOpened } from './recent-books.ts';
import { refuse } from './refuse.ts';
import { handlersOf } from './handlers.ts';

/** Interval of the check whether another window has written to the book. */
const lookEveryMs = 400;

export interface ServiceOptions extends SessionOptions {
  /** The book's file; made of the demo workshop in full swing if it does not exist. */
  readonly path: string;
  readonly log: Log;
  /** The book is the one that was open last, and not one that was asked for by name. */
  readonly lastUsed?: boolean;
}

export interface Service {
  readonly call: (channel: Channel, input: unknown) => Result<unknown, Refusal>;
  /** The same for a page: while long work is done, other calls are answered. */
  readonly answer: (channel: Channel, input: unknown) => Promise<Result<unknown, Refusal>>;
  readonly files: BookFiles;
  /** Why no book is open, if none is. */
  readonly fault: () => string | undefined;
  /** Checks now whether another window has written. */
  readonly look: () => void;
  /** The state of the book, for a page that has just connected. */
  readonly now: () => News;
  readonly close: () => void;
}

/**
 * Opens a book and answers every channel for it. For one that cannot be opened it answers the channels that bring a book
 * back; a name that is no book at all is refused with a sentence, unless it is that of the book used last.
 */
export function openService(options: ServiceOptions): Result<Service, string> {
  const opened = openOrMake(options);
  if (!opened.ok && isMistaken(opened.fault.fault, options)) {
    return failed(sayBookFault(opened.fault.fault, options.path));
  }
  const session = openSession(opened.ok ? opened.value : opened.fault, options);
  const handlers = handlersOf(session);
  const look = lookingWithoutFalling(session, options.log);
  const timer = setInterval(look, lookEveryMs).unref();
  return ok({
    call: (channel, input) => refuseWithoutBook(session, channel) ?? answerCall(handlers, channel, input, options.log),
    answer: async (channel, input) =>
      refuseWithoutBook(session, channel) ?? answerMeanwhile(handlers, channel, input, options.log),
    files: bookFiles(session),
    fault: () => {
      const unopened = session.unopened();
      return unopened && sayBookFault(unopened.fault, unopened.path);
    },
    look,
    now: session.now,
    close: () => {
      clearInterval(timer);
      session.close();
    },
  });
}

function openOrMake({ path, today, demoFolder, recentFile, lastUsed }: ServiceOptions): Result<Book, UnopenedBook> {
  const how = { today: today(), ...(demoFolder !== undefined && { demoFolder }) };
  const wasOpen = lastUsed === true && wasOpened(recentFile, path);
  const opened = wasOpen ? openBook(path, how) : openOrMakeBook(path, how);
  return opened.ok ? opened : failed({ path, fault: opened.fault });
}

function isMistaken({ kind }: OpeningFault, { lastUsed }: ServiceOptions): boolean {
  return lastUsed !== true && ['not-a-book', 'foreign', 'missing', 'demo-unreadable'].includes(kind);
}

/** What is answered while no book is open. */
const withoutBook: readonly Channel[] = [
  'program.about',
  'file.recent',
  'file.open',
  'file.new',
  'recovery.read',
  'recovery.restore',
  'recovery.salvage',
  'recovery.putAside',
];

/** While no book is open, each reading of it tries to open it once more. */
function refuseWithoutBook(session: Session, channel: Channel): Result<never, Refusal> | undefined {
  if (channel === 'book.read') session.tryAgain();
  const unopened = session.unopened();
  if (!unopened || withoutBook.includes(channel)) return undefined;
  return refuse(sayBookFault(unopened.fault, unopened.path));
}

/** If the book cannot be read for the moment, the next call reports it; the checks continue. */
function lookingWithoutFalling(session: Session, log: Log): () => void {
  let said = '';
  return () => {
    try {
      session.look();
      said = '';
    } catch (error) {
      const says = stackOf(error);
      if (says !== said) log(`the book cannot be looked at: ${says}`);
      said = says;
    }
  };
}
