import { rmSync, statSync, truncateSync, type BigIntStats } from 'node:fs';
import type { GoneHow } from '#shared-calc/records/book-fault.ts';

/** The open file of a book as seen by name, to notice that somebody has removed, replaced or written over it. */
export interface FilePlace {
  /** How the file has gone; undefined while the name still means the file that is open. */
  readonly gone: () => GoneHow | undefined;
  /** After this connection itself has written: the file is as it should be now. */
  readonly note: () => void;
  /** Bytes of the log beside the file, and how long ago it was written; none in a book at rest. */
  readonly log: () => { readonly bytes: number; readonly quietMs: number };
  /** Empties the log of a file that it no longer belongs to, so that closing does not mix the two. */
  readonly dropLog: () => void;
  /** Removes a log that is in the file by now, and its index. */
  readonly removeLog: () => void;
}

/** Another program settles its log in a few ms; after this time its writing is not that. */
const patienceMs = 400;
const pauseMs = 20;

/**
 * Watches the file at `path`, which has just been opened. Between the settling of logs the file itself is not written,
 * and who settles one moves the data version of all other connections: a file that is written without it was written by
 * hand, as by copying a backup over it.
 */
export function filePlace(path: string, dataVersion: () => number): FilePlace {
  // The version is read before the file: a log that is settled in between is then seen as a new version, never missed.
  let version = dataVersion();
  let known = seen(path);
  /** The file as it was judged to be written over, so that it is waited for once. */
  let judged: BigIntStats | undefined;

  function note(): void {
    version = dataVersion();
    known = seen(path);
  }
  function isWrittenOver(now: BigIntStats): boolean {
    if (judged && isSame(judged, now)) return dataVersion() === version;
    for (let waited = 0; waited <= patienceMs; waited += pauseMs) {
      if (dataVersion() !== version) return false;
      if (logOf(path).bytes === 0) return true;
      pause(pauseMs);
    }
    return dataVersion() === version;
  }
  return {
    note,
    log: () => logOf(path),
    dropLog: () => {
      if (logOf(path).bytes > 0) truncateSync(logName(path), 0);
    },
    removeLog: () => {
      if (logOf(path).bytes === 0) for (const end of ['-wal', '-shm']) rmSync(path + end, { force: true });
    },
    gone: () => {
      const versionNow = dataVersion();
      const now = seen(path);
      if (!now) return 'removed';
      if (!known || now.dev !== known.dev || now.ino !== known.ino) return 'replaced';
      if (isSame(now, known)) {
        version = versionNow;
        return undefined;
      }
      if (!isWrittenOver(now)) {
        note();
        return undefined;
      }
      judged = now;
      return 'written over';
    },
  };
}

/** Whether a file has not been written in between. */
function isSame(one: BigIntStats, other: BigIntStats): boolean {
  return one.mtimeNs === other.mtimeNs && one.size === other.size;
}

function seen(path: string): BigIntStats | undefined {
  return statSync(path, { bigint: true, throwIfNoEntry: false });
}

function logName(path: string): string {
  return `${path}-wal`;
}

function logOf(path: string): { readonly bytes: number; readonly quietMs: number } {
  const log = statSync(logName(path), { throwIfNoEntry: false });
  return log ? { bytes: log.size, quietMs: Date.now() - log.mtimeMs } : { bytes: 0, quietMs: Infinity };
}

/** The driver works on the only thread, and so does this. */
function pause(ms: number): void {
  Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, ms);
}
