import { randomUUID } from 'node:crypto';
import { statSync } from 'node:fs';
import { basename } from 'node:path';

import type { Book } from '#electron/book/book.ts';
import type { AlteredRow } from '#electron/book/checksums.ts';
import { sayAltered } from '#electron/book/say-altered.ts';
import { openBook } from '#electron/book/open-book.ts';
import { sayBookFault } from '#electron/book/say-book-fault.ts';
import type { BookInfo } from '#shared-calc/contract/channels.ts';
import type { News } from '#shared-calc/contract/news.ts';
import { ok } from '#shared-calc/result.ts';

import { rememberRecent } from './recent-books.ts';
import { sayOpeningNotes } from './say-opening-note.ts';

export interface SessionOptions {
  /** Today's date as `YYYY-MM-DD`, called each time: the program may run past midnight. */
  readonly today: () => string;
  /** Notifies the clients. */
  readonly onNews: (news: News) => void;
  /** File of the list of recent books. */
  readonly recentFile: string;
  /** File of the log of faults, if there is one. */
  readonly logFile?: string;
  /** Folder of the demo workshop's files; by default the one in the source tree. */
  readonly demoFolder?: string;
}

/** The open book and the last revision announced to clients. */
export interface Session {
  readonly options: SessionOptions;
  readonly book: () => Book;
  readonly info: () => { readonly ok: true; readonly value: BookInfo };
  readonly isCurrent: (opening: string) => boolean;
  /** Closes the open book, opens another in its place and notifies the clients. */
  readonly replace: (book: Book) => void;
  /** Announces that this client has written. */
  readonly wrote: () => void;
  /** Announces what another process has written, if anything; makes the day's backup on a new day. */
  readonly look: () => void;
  readonly now: () => News;
}

interface OpenBook {
  readonly book: Book;
  readonly opening: string;
  notices: readonly string[];
  /** Goes through the journal and the quote numbers of the book, a slice at each look. */
  history: Iterator<undefined, readonly AlteredRow[]> | undefined;
  /** The last revision announced to clients. */
  announced: number;
  savedAt: string;
  /** Whether clients know that the file has gone. */
  isGone: boolean;
}

export function openSession(first: Book, options: SessionOptions): Session {
  const { today, onNews, recentFile } = options;
  let current = openedBook(first);
  let day = today();

  function now(): News {
    return { is: 'written', opening: current.opening, revision: current.book.revision() };
  }
  function announce(): void {
    current.announced = current.book.revision();
    current.savedAt = new Date().toISOString();
    onNews(now());
  }
  function look(): void {
    const gone = current.book.gone() !== undefined;
    if (gone !== current.isGone) onNews({ is: 'gone', opening: current.opening });
    current.isGone = gone;
    if (gone) return;
    checkOn(current, onNews);
    current.book.settle();
    if (current.book.revision() !== current.announced) announce();
    if (today() === day) return;
    day = today();
    backUp(current.book.path, day);
  }
  return {
    options,
    book: () => current.book,
    info: () => ok(infoOf(current, today())),
    isCurrent: (opening) => opening === current.opening,
    replace: (book) => {
      for (const { path } of [current.book, book]) rememberRecent(recentFile, path);
      current.book.close();
      current = openedBook(book);
      onNews({ is: 'opened', opening: current.opening });
    },
    wrote: announce,
    look,
    now,
  };
}

function openedBook(book: Book): OpenBook {
  return {
    book,
    opening: randomUUID(),
    notices: sayOpeningNotes(book.notes, book.path),
    history: book.checkHistory(),
    announced: book.revision(),
    savedAt: statSync(book.path).mtime.toISOString(),
    isGone: false,
  };
}

/** Checks a further slice of the history. What is altered in it is one more notice of the book. */
function checkOn(open: OpenBook, onNews: (news: News) => void): void {
  const slice = open.history?.next();
  if (slice?.done !== true) return;
  open.history = undefined;
  if (slice.value.length === 0) return;
  open.notices = [...open.notices, sayAltered(slice.value, basename(open.book.path))];
  onNews({ is: 'told', opening: open.opening });
}

function infoOf({ book, opening, notices, savedAt }: OpenBook, today: string): BookInfo {
  const undo = book.canUndo();
  const redo = book.canRedo();
  return {
    opening,
    name: basename(book.path),
    path: book.path,
    revision: book.revision(),
    savedAt,
    ...(undo !== undefined && { undo }),
    ...(redo !== undefined && { redo }),
    notices: [...notices],
    today,
    ...goneOf(book),
  };
}

function goneOf(book: Book): Pick<BookInfo, 'gone'> {
  const how = book.gone();
  if (how === undefined) return {};
  const says = sayBookFault({ kind: 'gone', how }, basename(book.path));
  return { gone: { says, cure: how === 'written over' ? 'open what is there' : 'put back' } };
}

/** Opening a book makes the day's backup; a book that is open past midnight is opened once more for it. */
function backUp(path: string, today: string): void {
  const again = openBook(path, { today });
  if (again.ok) again.value.close();
}
