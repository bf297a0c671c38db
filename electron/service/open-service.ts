import type { Book } from '#electron/book/book.ts';
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
import type { Session, SessionOptions } from './session.ts';
import { handlersOf } from './handlers.ts';

/** Interval of the check whether another window has written to the book. */
const lookEveryMs = 400;

export interface ServiceOptions extends SessionOptions {
  /** The book's file; made of the demo workshop in full swing if it does not exist. */
  readonly path: string;
  readonly log: Log;
}

export interface Service {
  readonly call: (channel: Channel, input: unknown) => Result<unknown, Refusal>;
  /** The same for a page: while long work is done, other calls are answered. */
  readonly answer: (channel: Channel, input: unknown) => Promise<Result<unknown, Refusal>>;
  readonly files: BookFiles;
  /** Checks now whether another window has written. */
  readonly look: () => void;
  /** The state of the book, for a page that has just connected. */
  readonly now: () => News;
  readonly close: () => void;
}

/** Opens a book and answers every channel for it; the sentence says why if it cannot be opened. */
export function openService(options: ServiceOptions): Result<Service, string> {
  const opened = openOrMake(options);
  if (!opened.ok) return opened;
  const session = openSession(opened.value, options);
  const handlers = handlersOf(session);
  const look = lookingWithoutFalling(session, options.log);
  const timer = setInterval(look, lookEveryMs).unref();
  return ok({
    call: (channel, input) => answerCall(handlers, channel, input, options.log),
    answer: (channel, input) => answerMeanwhile(handlers, channel, input, options.log),
    files: bookFiles(session),
    look,
    now: session.now,
    close: () => {
      clearInterval(timer);
      session.book().close();
    },
  });
}

function openOrMake({ path, today, demoFolder }: ServiceOptions): Result<Book, string> {
  const how = { today: today(), ...(demoFolder !== undefined && { demoFolder }) };
  const opened = openOrMakeBook(path, how);
  return opened.ok ? opened : failed(sayBookFault(opened.fault, path));
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
