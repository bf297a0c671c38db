import { createHash } from 'node:crypto';
import { readdirSync } from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import type { Output } from '#shared-calc/contract/channels.ts';
import { readRecent } from './recent-books.ts';
import type { Session } from './session.ts';

export const bookEnding = '.loamwright';

/** The folder in which books are made that are only given a name: the one of the user's own book. */
export function ownFolder({ options }: Pick<Session, 'options'>): string {
  return resolve(dirname(options.recentFile));
}

/** The books that the page may choose among: the open one, those opened last, and those of the own folder. */
export function knownBooks(session: Session): readonly string[] {
  const folder = ownFolder(session);
  const own = namesIn(folder).map((name) => join(folder, name));
  return [...new Set([...openPath(session), ...readRecent(session.options.recentFile), ...own])];
}

function openPath(session: Session): readonly string[] {
  return session.unopened() ? [] : [session.path()];
}

function namesIn(folder: string): readonly string[] {
  try {
    return readdirSync(folder).filter((name) => name.endsWith(bookEnding) && !name.startsWith('.'));
  } catch {
    // There is no such folder before the first book is made in it.
    return [];
  }
}

/** The page names a book by this and never by its path. */
function bookId(path: string): string {
  return createHash('sha256').update(path).digest('hex').slice(0, 16);
}

export function findBook(session: Session, id: string): string | undefined {
  return knownBooks(session).find((path) => bookId(path) === id);
}

export function tellBooks(session: Session): Output<'file.recent'> {
  const [open] = openPath(session);
  return {
    books: knownBooks(session).map((path) => ({
      id: bookId(path),
      name: basename(path, bookEnding),
      folder: dirname(path),
      open: path === open,
    })),
  };
}
