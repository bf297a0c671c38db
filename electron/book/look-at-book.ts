import { copyFileSync, existsSync, mkdtempSync, realpathSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import type { BookFault, LookingFault } from '#shared-calc/records/book-fault.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { isOpenHere } from './connection.ts';
import { findClosedDoor, type OpenFile, openFile } from './open-file.ts';
import type { OpenOptions } from './open-options.ts';
import { storageFaultOf, storing } from './storage-fault.ts';

/** A copy of a file that cannot be written. */
export interface CopyToLookAt {
  readonly file: OpenFile;
  /** Whether the file itself has changed since, or can be written now. */
  readonly isStale: () => boolean;
  readonly forget: () => void;
}

/** Whether a file can be looked at although it cannot be written. */
export function isForLooking(fault: BookFault): fault is LookingFault {
  return fault.kind === 'read-only' || fault.kind === 'locked';
}

/** Opens a private copy of a file that may only be read, or that another program holds, with the log beside it. */
export function copyToLookAt(path: string, fault: LookingFault, options: OpenOptions): Result<CopyToLookAt, BookFault> {
  const real = realpathSync(path);
  // Reading it through the file system would drop the locks of the connection that has it open.
  if (isOpenHere(real)) return failed(fault);
  return storing(() => {
    const folder = mkdtempSync(join(tmpdir(), 'loamwright-'));
    const forget = () => rmSync(folder, { recursive: true, force: true });
    const before = stampOf(real);
    const opened = openCopy(real, join(folder, 'book'), options);
    if (opened.ok)
      return ok({ file: opened.value, isStale: () => stampOf(real) !== before || mayBeWritten(real), forget });
    forget();
    // A copy made while another program writes may be of two moments: then it is as locked as it was.
    return fault.kind === 'locked' && opened.fault.kind === 'damaged' ? failed(fault) : opened;
  });
}

function openCopy(real: string, copy: string, options: OpenOptions): Result<OpenFile, BookFault> {
  copyFileSync(real, copy);
  if (existsSync(`${real}-wal`)) copyFileSync(`${real}-wal`, `${copy}-wal`);
  return openFile(copy, { ...options, backups: false });
}

/** When file and log were last written, and how long they are. */
function stampOf(path: string): string {
  const [file, log] = ['', '-wal'].map((end) => statSync(path + end, { throwIfNoEntry: false }));
  return [file?.mtimeMs, file?.size, log?.mtimeMs, log?.size].join(' ');
}

function mayBeWritten(path: string): boolean {
  if (!existsSync(path) || findClosedDoor(path)) return false;
  const db = new Database(path, { fileMustExist: true, timeout: 0 });
  try {
    db.exec('BEGIN IMMEDIATE; ROLLBACK');
    return true;
  } catch (error) {
    if (!storageFaultOf(error)) throw error;
    return false;
  } finally {
    db.close();
  }
}
