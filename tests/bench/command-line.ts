import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { measure, ms, ratio, type Told } from './measure.ts';

const run = fileURLToPath(new URL('../../electron/cli/run.js', import.meta.url));

/** One size on the command line, from the start of its process, against a bare process. */
export function benchCommandLine(): readonly Told[] {
  const folder = mkdtempSync(path.join(tmpdir(), 'loamwright-bench-'));
  const book = path.join(folder, 'cli.loamwright');
  const spawn = (args: readonly string[]) => {
    const done = spawnSync(process.execPath, args, { encoding: 'utf8' });
    if (done.status !== 0) throw new Error(done.stderr);
  };
  spawn([run, 'book', 'new', book, '--start', 'plain']);
  const bare = measure({ times: 7, warm: 1 }, () => {
    spawn(['-e', '']);
  });
  const ours = measure({ times: 7, warm: 2 }, () => {
    spawn([run, 'bench', '--sizes', 'T07', '--book', book, '--json']);
  });
  rmSync(folder, { recursive: true });
  const floor = `a bare process ${ms(bare.median)}`;
  return [
    {
      what: 'command line, one size',
      took: ms(ours.median),
      floor,
      ratio: ratio(ours.median / bare.median),
      must: '300 ms',
    },
  ];
}
