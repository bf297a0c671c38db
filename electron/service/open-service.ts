import type { Book } from '#electron/book/book.ts';
import { openBook } from '#electron/book/open-book.ts';
import { sayBookFault } from '#electron/book/say-book-fault.ts';
import { makeDemoBook } from '#electron/book/seed-demo.ts';
import { existsSync } from 'node:fs';

import type { Channel } from '#shared-calc/contract/channel-names.ts';
import type { Refusal } from '#shared-calc/contract/channels.ts';
import type { News } from '#shared-calc/contract/news.ts';
import { failed, ok } from '#shared-calc/result.ts';
import type { Result } from '#shared-calc/result.ts';

import { answerCall, stackOf } from './answer-call.ts';
import type { Log } from './answer-call.ts';
import { openSession } from './session.ts';
import type { Session, SessionOptions } from './session.ts';
import { handlersOf } from './handlers.ts';

/** How often the book is asked whether another window has written in it. */
const lookEveryMs = 400;

export interface ServiceOptions extends SessionOptions {
  /** The book; made from the demo workshop where there is none. */
  readonly path: string;
  readonly log: Log;
}

export interface Service {
  readonly call: (channel: Channel, input: unknown) => Result<unknown, Refusal>;
  /** Looks now, without waiting for the next time, whether another window has written. */
  readonly look: () => void;
  /** Where the book stands, as a page is told that has just come. */
  readonly now: () => News;
  readonly close: () => void;
}

/** Opens a book and answers every channel over it; the sentence says why where it cannot be opened. */
export function openService(options: ServiceOptions): Result<Service, string> {
  const opened = openOrMake(options);
  if (!opened.ok) return opened;
  const session = openSession(opened.value, options);
  const handlers = handlersOf(session);
  const look = lookingWithoutFalling(session, options.log);
  const timer = setInterval(look, lookEveryMs).unref();
  return ok({
    call: (channel, input) => answerCall(handlers, channel, input, options.log),
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
  const opened = existsSync(path) ? openBook(path, { today: today() }) : makeDemoBook(path, how);
  return opened.ok ? opened : failed(sayBookFault(opened.fault, path));
}

/** A book that cannot be read for the moment is told of by the next call; looking goes on. */
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
