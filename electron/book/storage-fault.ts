import Database from 'better-sqlite3';
import type { StorageFault } from '#shared-calc/records/book-fault.ts';
import { failed, type Result } from '#shared-calc/result.ts';

const byCode: Readonly<Record<string, StorageFault>> = {
  SQLITE_BUSY: { kind: 'locked' },
  SQLITE_LOCKED: { kind: 'locked' },
  SQLITE_FULL: { kind: 'no-room' },
  SQLITE_READONLY: { kind: 'read-only', what: 'file' },
  SQLITE_READONLY_DIRECTORY: { kind: 'read-only', what: 'folder' },
  SQLITE_READONLY_CANTINIT: { kind: 'read-only', what: 'folder' },
  SQLITE_CANTOPEN: { kind: 'no-access' },
  SQLITE_PERM: { kind: 'no-access' },
  ENOSPC: { kind: 'no-room' },
  EDQUOT: { kind: 'no-room' },
  EROFS: { kind: 'read-only', what: 'folder' },
  EACCES: { kind: 'no-access' },
  EPERM: { kind: 'no-access' },
};

/** Runs code that touches the disk. Errors of the disk become faults; bugs are thrown again. */
export function storing<T, F>(act: () => Result<T, F>): Result<T, F | StorageFault> {
  try {
    return act();
  } catch (error) {
    const fault = storageFaultOf(error);
    if (!fault) throw error;
    return failed(fault);
  }
}

export function storageFaultOf(error: unknown): StorageFault | undefined {
  const code = codeOf(error);
  const known = byCode[code] ?? byCode[code.split('_').slice(0, 2).join('_')];
  if (known) return known;
  if (/^SQLITE_(CORRUPT|NOTADB)/.test(code))
    return { kind: 'damaged', damage: { what: 'pages', says: [saysOf(error)] } };
  return code.startsWith('SQLITE_IOERR') || isFileError(error) ? { kind: 'disk', code } : undefined;
}

/** Errors of the file system name the failed system call; no other error does. */
function isFileError(error: unknown): boolean {
  return error instanceof Error && 'syscall' in error;
}

/** The code of an error of the file system or of the database; empty if it has none. */
export function codeOf(error: unknown): string {
  if (!(error instanceof Error) || !('code' in error)) return '';
  return typeof error.code === 'string' ? error.code : '';
}

export function isDatabaseError(error: unknown): error is Error {
  return error instanceof Database.SqliteError;
}

function saysOf(error: unknown): string {
  return error instanceof Error ? error.message : '';
}
