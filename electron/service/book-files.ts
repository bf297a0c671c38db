import { existsSync, mkdirSync, renameSync, rmSync } from 'node:fs';
import { basename, extname, join } from 'node:path';
import { openBook } from '#electron/book/open-book.ts';
import { sayBookFault } from '#electron/book/say-book-fault.ts';
import type { Begun } from '#electron/book/seed-demo.ts';
import type { BookInfo, Refusal } from '#shared-calc/contract/channels.ts';
import type { Result } from '#shared-calc/result.ts';
import { bookEnding, knownBooks, ownFolder } from './book-list.ts';
import { copyTo, makeAt, openOther } from './file-acts.ts';
import { refuse } from './refuse.ts';
import { safeName } from './safe-name.ts';
import type { Session } from './session.ts';

/** Acts on files by their paths, for the shell's own dialogs and for files that a browser sends; no channel leads here. */
export interface BookFiles {
  /** The name of the open book's file. */
  readonly name: () => string;
  /** Paths of the books to open again, the open one first. */
  readonly recent: () => readonly string[];
  readonly open: (path: string) => Result<BookInfo, Refusal>;
  readonly make: (path: string, begun: Begun) => Result<BookInfo, Refusal>;
  /** Writes the open book out as one whole file. */
  readonly saveCopy: (path: string, how: { readonly replace: boolean }) => Result<{ readonly path: string }, Refusal>;
  /** Checks a file as any book, moves it into the own folder under a free name, and opens it. */
  readonly takeIn: (file: string, name: string) => Result<BookInfo, Refusal>;
  /** A path in the own folder for a file that is not a book yet. */
  readonly partPath: () => string;
}

export function bookFiles(session: Session): BookFiles {
  return {
    name: () => basename(session.path()),
    recent: () => knownBooks(session),
    open: (path) => openOther(session, path),
    make: (path, begun) => makeAt(session, path, begun),
    saveCopy: (path, { replace }) => copyTo(session, path, replace),
    takeIn: (file, name) => takeIn(session, file, name),
    partPath: () => {
      mkdirSync(ownFolder(session), { recursive: true });
      return join(ownFolder(session), `.part-${crypto.randomUUID()}${bookEnding}`);
    },
  };
}

function takeIn(session: Session, file: string, name: string): Result<BookInfo, Refusal> {
  const tried = openBook(file, { today: session.options.today(), backups: false });
  if (!tried.ok) {
    removeBook(file);
    return refuse(sayBookFault(tried.fault, basename(name)));
  }
  tried.value.close();
  const path = freePath(ownFolder(session), name);
  renameSync(file, path);
  removeBook(file);
  return openOther(session, path);
}

/** A name that is free in the folder: `Ferry.loamwright`, `Ferry 2.loamwright`. */
function freePath(folder: string, name: string): string {
  const bare = safeName(basename(name, extname(name))) || 'Workshop';
  for (let turn = 1; ; turn += 1) {
    const path = join(folder, `${turn === 1 ? bare : `${bare} ${turn}`}${bookEnding}`);
    if (!existsSync(path)) return path;
  }
}

/** A book that is not wanted, with the files that SQLite keeps beside one. */
function removeBook(file: string): void {
  for (const end of ['', '-wal', '-shm']) rmSync(`${file}${end}`, { force: true });
}
