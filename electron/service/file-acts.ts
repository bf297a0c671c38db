import { extname, join } from 'node:path';

import { openBook } from '#electron/book/open-book.ts';
import { sayBookFault } from '#electron/book/say-book-fault.ts';
import { beginBook, type Begun } from '#electron/book/seed-demo.ts';
import type { BookInfo, Input, Refusal } from '#shared-calc/contract/channels.ts';
import type { Result } from '#shared-calc/result.ts';

import { bookEnding, findBook, ownFolder } from './book-list.ts';
import type { Session } from './session.ts';
import { refuse } from './refuse.ts';
import { safeName } from './safe-name.ts';

/** Opens another book; if that fails, the current one stays open. */
export function openOther(session: Session, path: string): Result<BookInfo, Refusal> {
  const opened = openBook(path, { today: session.options.today() });
  if (!opened.ok) return refuse(sayBookFault(opened.fault, path));
  session.replace(opened.value);
  return session.info();
}

/** Opens one of the books that the page was told of. */
export function openKnown(session: Session, id: string): Result<BookInfo, Refusal> {
  const path = findBook(session, id);
  return path === undefined ? refuse('This book is not there any more.') : openOther(session, path);
}

/** Creates a book of a name in the own folder, and opens it. */
export function newBook(session: Session, { name, ...begun }: Input<'file.new'>): Result<BookInfo, Refusal> {
  const bare = name.trim().replace(/\.loamwright$/i, '');
  if (bare === '' || safeName(bare) !== bare) {
    return refuse('A book is named with letters, figures, blanks, - and _, such as Fern and Stone.');
  }
  return makeAt(session, join(ownFolder(session), `${bare}${bookEnding}`), begun);
}

/** Creates a book at a path, and opens it. */
export function makeAt(session: Session, wanted: string, begun: Begun): Result<BookInfo, Refusal> {
  const path = withEnding(wanted);
  const { today, demoFolder } = session.options;
  const made = beginBook(path, begun, { today: today(), ...(demoFolder !== undefined && { demoFolder }) });
  if (!made.ok) return refuse(sayBookFault(made.fault, path));
  session.replace(made.value);
  return session.info();
}

/** Puts the file of the open book back, or opens what was written over it by hand; then it is open as any book. */
export function putBack(session: Session): Result<BookInfo, Refusal> {
  const book = session.book();
  const how = book.gone();
  if (how === undefined) return session.info();
  if (how === 'written over') {
    book.close();
    return openOther(session, book.path);
  }
  const back = book.putBack();
  return back.ok ? openOther(session, book.path) : refuse(sayBookFault(back.fault, book.path));
}

/** Writes the open book out as one whole file; it stays open. */
export function copyTo(session: Session, wanted: string, replace: boolean): Result<{ readonly path: string }, Refusal> {
  if (session.unopened()) return refuse('No book is open.');
  const path = withEnding(wanted);
  const saved = session.book().exportTo(path, { replace });
  return saved.ok ? saved : refuse(sayBookFault(saved.fault, path));
}

function withEnding(path: string): string {
  return extname(path) === '' ? `${path}${bookEnding}` : path;
}
