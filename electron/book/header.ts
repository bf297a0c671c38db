import { closeSync, openSync, readSync, statSync } from 'node:fs';
import type { BookFault } from '#shared-calc/records/book-fault.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { codeOf, storing } from './storage-fault.ts';

/** 'LOAM', big-endian, at byte 68 of the file. */
export const applicationId = 0x4c4f414d;

const headerBytes = 100;
const magic = 'SQLite format 3\0';

/** Reads the version of a book through the file system only: takes no lock and creates no files next to it. */
export function readHeader(path: string, newest: number): Result<{ readonly version: number }, BookFault> {
  return storing(() => {
    const kind = fileKind(path);
    if (kind !== 'file') return failed(kind);
    return judgeHeader(readStart(path), newest);
  });
}

/** Whether a file is there that was a book, or whose start is destroyed: what another program writes is none. */
export function isBookFile(path: string): boolean {
  if (fileKind(path) !== 'file') return false;
  const start = readStart(path);
  const isFilled = start.some((byte) => byte !== 0);
  return !isFilled || (start.length === headerBytes && start.readUInt32BE(68) === applicationId);
}

function fileKind(path: string): 'file' | BookFault {
  try {
    const file = statSync(path);
    return file.isFile() ? 'file' : { kind: 'not-a-book', what: file.isDirectory() ? 'folder' : 'device' };
  } catch (error) {
    if (!['ENOENT', 'ENOTDIR'].includes(codeOf(error))) throw error;
    return { kind: 'missing' };
  }
}

function readStart(path: string): Buffer {
  const file = openSync(path, 'r');
  try {
    const start = Buffer.alloc(headerBytes);
    return start.subarray(0, readSync(file, start, 0, headerBytes, 0));
  } finally {
    closeSync(file);
  }
}

function judgeHeader(start: Buffer, newest: number): Result<{ readonly version: number }, BookFault> {
  if (start.length === 0) return failed({ kind: 'not-a-book', what: 'empty' });
  if (start.toString('latin1', 0, magic.length) !== magic) return failed({ kind: 'not-a-book', what: 'other' });
  if (start.length < headerBytes) return failed({ kind: 'damaged', damage: { what: 'pages', says: [] } });
  return judgeVersion(start.readUInt32BE(68), start.readUInt32BE(60), newest);
}

/** Whether a file with this mark and version is a book this program can read. */
export function judgeVersion(
  mark: number,
  version: number,
  newest: number,
): Result<{ readonly version: number }, BookFault> {
  if (mark !== applicationId) return failed({ kind: 'foreign', applicationId: mark });
  if (version > newest) return failed({ kind: 'newer', found: version, newest });
  if (version < 1) return failed({ kind: 'damaged', damage: { what: 'tables', names: [] } });
  return ok({ version });
}
