import { homedir } from 'node:os';
import { extname, isAbsolute, join } from 'node:path';

import { openBook } from '#electron/book/open-book.ts';
import { sayBookFault } from '#electron/book/say-book-fault.ts';
import { beginBook } from '#electron/book/seed-demo.ts';
import type { BookInfo, Input, Output, Refusal } from '#shared-calc/contract/channels.ts';
import { ok } from '#shared-calc/result.ts';
import type { Result } from '#shared-calc/result.ts';

import type { Session } from './session.ts';
import { refuse } from './refuse.ts';

/** Opens another book; if that fails, the current one stays open. */
export function openOther(session: Session, typed: string): Result<BookInfo, Refusal> {
  const path = wholePath(typed);
  if (!path.ok) return path;
  const opened = openBook(path.value, { today: session.options.today() });
  if (!opened.ok) return refuse(sayBookFault(opened.fault, path.value));
  session.replace(opened.value);
  return session.info();
}

/** Creates a book that begins as asked, and opens it. */
export function newBook(session: Session, { path: typed, ...begun }: Input<'file.new'>): Result<BookInfo, Refusal> {
  const path = bookPath(typed);
  if (!path.ok) return path;
  const { today, demoFolder } = session.options;
  const made = beginBook(path.value, begun, { today: today(), ...(demoFolder !== undefined && { demoFolder }) });
  if (!made.ok) return refuse(sayBookFault(made.fault, path.value));
  session.replace(made.value);
  return session.info();
}

/** Puts the file of the open book back, or opens what was written over it by hand; then it is open as any book. */
export function putBack(session: Session): Result<BookInfo, Refusal> {
  const book = session.book();
  const how = book.gone();
  if (how === undefined) return session.info();
  if (how === 'written over') book.close();
  const back = how === 'written over' ? ok(undefined) : book.putBack();
  if (!back.ok) return refuse(sayBookFault(back.fault, book.path));
  return openOther(session, book.path);
}

/** Saves a copy of the book; the original stays open. */
export function saveCopy(session: Session, input: Input<'file.saveCopy'>): Result<Output<'file.saveCopy'>, Refusal> {
  const path = bookPath(input.path);
  if (!path.ok) return path;
  const saved = session.book().exportTo(path.value, { replace: input.replace });
  return saved.ok ? saved : refuse(sayBookFault(saved.fault, path.value));
}

function bookPath(typed: string): Result<string, Refusal> {
  const path = wholePath(typed);
  if (!path.ok || extname(path.value) !== '') return path;
  return ok(`${path.value}.loamwright`);
}

/**
 * An absolute path; `~` is the user's home. A relative path is refused, because the working directory must not matter.
 */
function wholePath(typed: string): Result<string, Refusal> {
  const path = typed.trim();
  if (/^~[/\\]/.test(path)) return ok(join(homedir(), path.slice(2)));
  if (path.includes('\0') || !isAbsolute(path)) {
    return refuse(`Give the file with its whole folder, such as ${join(homedir(), 'Workshop.loamwright')}.`);
  }
  return ok(path);
}
