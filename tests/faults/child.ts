import { spawn, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { fileURLToPath } from 'node:url';
import { onTestFinished } from 'vitest';

/** A second process over a book: its lines as they come, and its end. */
export interface Child {
  readonly process: ChildProcess;
  readonly lines: readonly string[];
  readonly nextLine: () => Promise<string>;
  readonly end: () => Promise<void>;
}

/** Starts one of the scripts in this folder; it ends with the test at the latest. */
export function startChild(script: string, ...args: readonly string[]): Child {
  const path = fileURLToPath(new URL(script, import.meta.url));
  const child = spawn(process.execPath, [path, ...args], { stdio: ['pipe', 'pipe', 'inherit'] });
  const lines: string[] = [];
  let rest = '';
  let read = 0;
  let wake = () => {};
  child.stdout.on('data', (piece: Buffer) => {
    const parts = (rest + piece.toString('utf8')).split('\n');
    rest = parts.pop() ?? '';
    lines.push(...parts);
    wake();
  });
  const ended = once(child, 'close').then(() => wake());
  onTestFinished(() => {
    child.kill('SIGKILL');
  });
  return {
    process: child,
    lines,
    nextLine: async () => {
      while (lines.length <= read) {
        if (child.exitCode !== null) throw new Error(`${script} ended with ${child.exitCode}`);
        await new Promise<void>((resolve) => (wake = resolve));
      }
      read += 1;
      return lines[read - 1] ?? '';
    },
    end: () => ended,
  };
}
