import { appendFileSync, mkdirSync, statSync, truncateSync } from 'node:fs';
import { dirname } from 'node:path';

const largestLog = 1_000_000;

/** A log of faults with their times; a large log is started again from empty. */
export function openFaultLog(file: string, now: () => string): (text: string) => void {
  return (text) => {
    try {
      mkdirSync(dirname(file), { recursive: true });
      if ((statSync(file, { throwIfNoEntry: false })?.size ?? 0) > largestLog) truncateSync(file);
      appendFileSync(file, `${now()} ${text}\n`, { mode: 0o600 });
    } catch {
      // A full disk must not crash the program: the entry is lost.
    }
  };
}
