import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll } from 'vitest';
import { main } from '#electron/cli/main.ts';
import { today } from '#electron/service/today.ts';
import { writeDemoBook } from '#tests/write-demo-book.ts';

export interface Ran {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

/** Runs a command line within the test's own process, and captures all output. */
export async function lw(...argv: readonly string[]): Promise<Ran> {
  const out: string[] = [];
  const err: string[] = [];
  const code = await main(argv, {
    stdout: { write: (text) => out.push(text) },
    stderr: { write: (text) => err.push(text) },
  });
  return { code: code ?? 0, out: out.join(''), err: err.join('') };
}

/** The one JSON value that a command prints; a refusal throws. */
export async function lwJson(...argv: readonly string[]): Promise<unknown> {
  const { code, out, err } = await lw(...argv, '--json');
  if (code !== 0) throw new Error(`exit ${code}: ${err}`);
  return JSON.parse(out);
}

const program = fileURLToPath(new URL('../../../electron/cli/run.js', import.meta.url));

/** Runs a command line as a separate process; slow, so only for tests of the process itself. */
export function lwProcess(...argv: readonly string[]): Ran {
  const ran = spawnSync(process.execPath, [program, ...argv], { encoding: 'utf8' });
  return { code: ran.status ?? -1, out: ran.stdout, err: ran.stderr };
}

/** A folder with a book of the demo workshop, made on a given day, for all tests of a file; removed afterwards. */
export function useDemoBook(day = today()): { readonly folder: () => string; readonly book: () => string } {
  let folder = '';
  const book = () => path.join(folder, 'Demo.loamwright');
  beforeAll(() => {
    folder = mkdtempSync(path.join(tmpdir(), 'loamwright-cli-'));
    writeDemoBook(book(), day);
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  return { folder: () => folder, book };
}
