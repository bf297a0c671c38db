import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { join } from 'node:path';

import { failed, ok } from '#shared-calc/result.ts';
import type { Result } from '#shared-calc/result.ts';
import { isStale, projectFolder, type Bundle } from './is-stale.ts';

export const pageBundle: Bundle = {
  name: 'page',
  settings: 'renderer/vite.config.ts',
  sources: ['renderer', 'shared-calc', 'package-lock.json'],
  built: 'renderer/dist/index.html',
};

/** Folder of the built page. */
export const pageFolder: string = join(projectFolder, 'renderer/dist');

/** Builds a bundle that is older than its sources; says so first, because it takes a second or two. */
export function buildIfStale(bundle: Bundle, say: (text: string) => void): Result<undefined, string> {
  if (!isStale(projectFolder, bundle)) return ok(undefined);
  const builder = join(projectFolder, 'node_modules/vite/bin/vite.js');
  if (!existsSync(builder)) return failed(`The ${bundle.name} is not built, and its builder is not there: run npm ci.`);
  say(`Building the ${bundle.name}.`);
  const args = [builder, 'build', '--config', bundle.settings, '--logLevel', 'warn'];
  const built = spawnSync(process.execPath, args, { cwd: projectFolder, stdio: ['ignore', 'ignore', 'inherit'] });
  return built.status === 0 ? ok(undefined) : failed(`The ${bundle.name} could not be built.`);
}
