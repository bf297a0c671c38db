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
import { sayLooking, sayOpeningNotes } from './say-opening-note.ts';

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
  /** The open book; a bug where none is. */
  readonly book: () => Book;
  /** The file of the open book, or of the one that cannot be opened. */
  readonly path: () => string;
  /** The book that cannot be opened, as long as none is open. */
  readonly unopened: () => UnopenedBook | undefined;
  /** Tries a book that could not be opened once more. */
  readonly tryAgain: () => void;
  readonly info: () => { readonly ok: true; readonly value: BookInfo };
  readonly isCurrent: (opening: string) => boolean;
  /** Closes the open book, opens another in its place and notifies the clients. */
  readonly replace: (book: Book) => void;
  /** Announces that this client has written. */
  readonly wrote: () => void;
  /** Announces what another process has written, if anything; makes the day's backup on a new day. */
  readonly look: () => void;
  readonly now: () => News;
  readonly close: () => void;
}

/** A book that cannot be opened, and why. */
export interface UnopenedBook {
  readonly path: string;
  readonly fault: OpeningFault;
}

export type OpeningFault = Parameters<typeof sayBookFault>[0];

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

interface SessionState {
  readonly options: SessionOptions;
  open: OpenBook | undefined;
  unopened: UnopenedBook | undefined;
  day: string;
}

/** A session over a book, or over one that cannot be opened until another is. */
export function openSession(first: Book | UnopenedBook, options: SessionOptions): Session {
  const state: SessionState = {
    options,
    open: 'fault' in first ? undefined : openedBook(first),
    unopened: 'fault' in first ? first : undefined,
    day: options.today(),
  };
  const opened = () => openOf(state);
  return {
    options,
    book: () => opened().book,
    path: () => state.unopened?.path ?? opened().book.path,
    unopened: () => state.unopened,
    tryAgain: () => state.unopened && openAgain(state, state.unopened.path),
    info: () => ok(infoOf(opened(), options.today())),
    isCurrent: (opening) => opening === state.open?.opening,
    replace: (book) => replace(state, book),
    wrote: () => announce(state, opened()),
    look: () => look(state),
    now: () => nowOf(state),
    close: () => state.open?.book.close(),
  };
}

function openOf({ open }: SessionState): OpenBook {
  if (!open) throw new Error('no book is open');
  return open;
}

function nowOf({ open }: SessionState): News {
  if (!open) return { is: 'opened', opening: '' };
  return { is: 'written', opening: open.opening, revision: open.book.revision() };
}

function replace(state: SessionState, book: Book): void {
  const { recentFile, onNews } = state.options;
  for (const path of [state.open?.book.path, book.path]) if (path !== undefined) rememberRecent(recentFile, path);
  state.open?.book.close();
  state.unopened = undefined;
  state.open = openedBook(book);
  onNews({ is: 'opened', opening: state.open.opening });
}

function openAgain(state: SessionState, path: string): void {
  const again = openBook(path, { today: state.options.today() });
  if (again.ok) replace(state, again.value);
  else if (state.unopened) state.unopened = { path, fault: again.fault };
}

function announce(state: SessionState, open: OpenBook): void {
  open.announced = open.book.revision();
  open.savedAt = new Date().toISOString();
  state.options.onNews(nowOf(state));
}

function look(state: SessionState): void {
  const { open, options } = state;
  if (!open) return;
  const { book } = open;
  if (book.looking) {
    if (book.looking.isStale()) openAgain(state, book.path);
    return;
  }
  const gone = book.gone() !== undefined;
  if (gone !== open.isGone) options.onNews({ is: 'gone', opening: open.opening });
  open.isGone = gone;
  if (gone) return;
  checkOn(open, options.onNews);
  book.settle();
  if (book.revision() !== open.announced) announce(state, open);
  if (options.today() === state.day) return;
  state.day = options.today();
  backUp(book.path, state.day);
}

function openedBook(book: Book): OpenBook {
  return {
    book,
    opening: randomUUID(),
    // That it is only looked at stands at the foot of the page all the time.
    notices: sayOpeningNotes(
      book.notes.filter(({ kind }) => kind !== 'looking'),
      book.path,
    ),
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
    ...(book.looking && { looking: sayLooking(book.looking.fault, basename(book.path)) }),
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
