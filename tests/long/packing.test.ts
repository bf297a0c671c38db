import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { projectFolder } from '#electron/host/is-stale.ts';

test('the packer makes every target with what it needs and no more', () => {
  const run = spawnSync(process.execPath, [join(projectFolder, 'electron/package.ts'), '--dry'], {
    encoding: 'utf8',
  });
  expect([run.status, run.stderr]).toEqual([0, '']);
}, 600_000);
