import { statSync } from 'node:fs';
import Database from 'better-sqlite3';

/** A longer wait would freeze the whole window: the driver waits on the only thread. */
export const lockWaitMs = 400;

export interface Connection {
  readonly db: Database.Database;
  readonly close: () => void;
}

/*
 * The files this process has open, by device and inode. Reading such a file through the file system and closing it
 * again would drop all locks SQLite holds on it for this process (see "How To Corrupt An SQLite Database File",
 * 2.2), so no code here does that.
 */
const openFiles = new Map<string, number>();

export function connect(path: string): Connection {
  const key = fileKey(path);
  const db = new Database(path, { fileMustExist: true, timeout: lockWaitMs });
  openFiles.set(key, (openFiles.get(key) ?? 0) + 1);
  const close = closing(db, key);
  try {
    guard(db);
    db.pragma('foreign_keys = ON');
    db.pragma('synchronous = FULL');
  } catch (error) {
    close();
    throw error;
  }
  return { db, close };
}

/** For a file that may be crafted. The driver itself refuses writes to the schema table (its defensive mode). */
export function guard(db: Database.Database): void {
  db.pragma('trusted_schema = OFF');
  db.pragma('cell_size_check = ON');
}

/** Whether this process has the file open as a book. */
export function isOpenHere(path: string): boolean {
  return openFiles.has(fileKey(path));
}

function closing(db: Database.Database, key: string): () => void {
  return () => {
    if (!db.open) return;
    db.close();
    const others = (openFiles.get(key) ?? 1) - 1;
    if (others > 0) openFiles.set(key, others);
    else openFiles.delete(key);
  };
}

function fileKey(path: string): string {
  const file = statSync(path, { bigint: true, throwIfNoEntry: false });
  return file ? `${file.dev} ${file.ino}` : path;
}
