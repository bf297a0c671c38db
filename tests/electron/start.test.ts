import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, test } from 'vitest';

const root = fileURLToPath(new URL('../../', import.meta.url));
const home = mkdtempSync(join(tmpdir(), 'loamwright-test-'));

afterAll(() => rmSync(home, { recursive: true, force: true }));

describe.each([
  ['npm start', ['electron/start.ts']],
  ['the command line’s start', ['electron/cli/run.js', 'start']],
])('%s', (_, program) => {
  test('serves the user’s own book, says where, and ends with Ctrl+C', async () => {
    const { said, ended } = await run([...program, '--no-browser'], (text) => text.includes('/?key='));

    expect(ended).toBe(0);
    expect(said).toContain('Workshop.loamwright is open. Ctrl+C ends Loamwright.\n');
    expect(said).toMatch(
      /Open this link within a minute; it lets one browser in, once: http:\/\/127\.0\.0\.1:\d+\/\?key=[\w-]{43}\n$/,
    );
  });

  test.each([
    ['a wrong port', ['--port', 'http'], 2, '--port http: a port is a number from 1 to 65535.\n'],
    ['an option that is not known', ['--bok', 'x'], 2, 'Unknown option --bok. Did you mean --book?\n'],
    [
      'a book that is none',
      ['--book', join(home, 'letter.txt'), '--no-browser'],
      3,
      `${join(home, 'letter.txt')} is not a book.\n`,
    ],
  ])('%s is refused', async (_name, args, code, says) => {
    writeFileSync(join(home, 'letter.txt'), 'Dear Ottoline, '.repeat(100));
    const { said, ended } = await run([...program, ...args], () => false);

    expect([ended, said]).toEqual([code, expect.stringContaining(says)]);
  });
});

interface Ran {
  readonly said: string;
  readonly ended: number | null;
}

/** Runs a program with an empty folder, and presses Ctrl+C once the expected output has appeared. */
function run(args: readonly string[], isReady: (said: string) => boolean): Promise<Ran> {
  const env = { ...process.env, XDG_DATA_HOME: home, APPDATA: home, HOME: home };
  const child = spawn(process.execPath, args, { cwd: root, env, stdio: ['ignore', 'pipe', 'pipe'] });
  let said = '';
  const hear = (part: Buffer) => {
    said += part.toString('utf8');
    if (isReady(said)) child.kill('SIGINT');
  };
  child.stdout.on('data', hear);
  child.stderr.on('data', hear);
  return new Promise((ran) => child.on('close', (ended) => ran({ said, ended })));
}
