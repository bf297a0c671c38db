import { randomUUID } from 'node:crypto';
import { statSync } from 'node:fs';
import { basename } from 'node:path';

import type { Book } from '#electron/book/book.ts';
import { openBook } from '#electron/book/open-book.ts';
import type { BookInfo, Output } from '#shared-calc/contract/channels.ts';
import type { News } from '#shared-calc/contract/news.ts';
import { ok } from '#shared-calc/result.ts';

import { readRecent, rememberRecent } from './recent-books.ts';
import { sayOpeningNotes } from './say-opening-note.ts';

export interface DeskOptions {
  /** Today's date as `YYYY-MM-DD`, asked each time: the program may run past midnight. */
  readonly today: () => string;
  /** Tells the pages. */
  readonly onNews: (news: News) => void;
  /** Where the list of recent books is kept. */
  readonly recentFile: string;
  /** Where the demo workshop's files are, if not beside the program's source. */
  readonly demoFolder?: string;
}

/** The book that lies open, and what the pages have been told of it. */
export interface Desk {
  readonly options: DeskOptions;
  readonly book: () => Book;
  readonly info: () => { readonly ok: true; readonly value: BookInfo };
  readonly isLying: (opening: string) => boolean;
  /** Puts another book in the place of the one that lies there, and tells the pages. */
  readonly lay: (book: Book) => void;
  /** Notes that this window has written, and tells the pages. */
  readonly wrote: () => void;
  /** Tells the pages what another window has written, if anything; on a new day the day's backup is made. */
  readonly look: () => void;
  readonly now: () => News;
  readonly recent: () => { readonly ok: true; readonly value: Output<'file.recent'> };
}

interface Lying {
  readonly book: Book;
  readonly opening: string;
  readonly notices: readonly string[];
  /** The last revision that the pages have been told of. */
  told: number;
  savedAt: string;
}

export function layDesk(first: Book, options: DeskOptions): Desk {
  const { today, onNews, recentFile } = options;
  let lying = lyingOf(first);
  let day = today();

  function now(): News {
    return { is: 'written', opening: lying.opening, revision: lying.book.revision() };
  }
  function tell(): void {
    lying.told = lying.book.revision();
    lying.savedAt = new Date().toISOString();
    onNews(now());
  }
  function look(): void {
    if (lying.book.revision() !== lying.told) tell();
    if (today() === day) return;
    day = today();
    backUp(lying.book.path, day);
  }
  return {
    options,
    book: () => lying.book,
    info: () => ok(infoOf(lying, today())),
    isLying: (opening) => opening === lying.opening,
    lay: (book) => {
      for (const { path } of [lying.book, book]) rememberRecent(recentFile, path);
      lying.book.close();
      lying = lyingOf(book);
      onNews({ is: 'opened', opening: lying.opening });
    },
    wrote: tell,
    look,
    now,
    recent: () => ok({ paths: [...new Set([lying.book.path, ...readRecent(recentFile)])] }),
  };
}

function lyingOf(book: Book): Lying {
  return {
    book,
    opening: randomUUID(),
    notices: sayOpeningNotes(book.notes, book.path),
    told: book.revision(),
    savedAt: statSync(book.path).mtime.toISOString(),
  };
}

function infoOf({ book, opening, notices, savedAt }: Lying, today: string): BookInfo {
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
  };
}

/** Opening a book makes the day's backup; one that lies open over midnight is opened once more for it. */
function backUp(path: string, today: string): void {
  const again = openBook(path, { today });
  if (again.ok) again.value.close();
}
