import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

import { failed, ok } from '#shared-calc/result.ts';
import type { Result } from '#shared-calc/result.ts';

/** Something built of sources, with the settings it is built by. */
export interface Bundle {
  readonly name: string;
  readonly settings: string;
  readonly sources: readonly string[];
  /** The file that is there and newer than every source once it is built. */
  readonly built: string;
}

/** The project's own folder. */
export const projectFolder = fileURLToPath(new URL('../../', import.meta.url));

export const pageBundle: Bundle = {
  name: 'page',
  settings: 'renderer/vite.config.ts',
  sources: ['renderer', 'shared-calc', 'package-lock.json'],
  built: 'renderer/dist/index.html',
};

/** Where the built page lies. */
export const pageFolder: string = join(projectFolder, 'renderer/dist');

/** Builds what is older than its sources; says so first, since it takes a second or two. */
export function buildIfStale(bundle: Bundle, say: (text: string) => void): Result<undefined, string> {
  if (!isStale(projectFolder, bundle)) return ok(undefined);
  const builder = join(projectFolder, 'node_modules/vite/bin/vite.js');
  if (!existsSync(builder)) return failed(`The ${bundle.name} is not built, and its builder is not there: run npm ci.`);
  say(`Building the ${bundle.name}.`);
  const args = [builder, 'build', '--config', bundle.settings, '--logLevel', 'warn'];
  const built = spawnSync(process.execPath, args, { cwd: projectFolder, stdio: ['ignore', 'ignore', 'inherit'] });
  return built.status === 0 ? ok(undefined) : failed(`The ${bundle.name} could not be built.`);
}

/** Whether a bundle is missing, or older than something it is built of. Folders count, so that what went is noticed. */
export function isStale(root: string, { sources, settings, built }: Bundle): boolean {
  const made = statSync(join(root, built), { throwIfNoEntry: false });
  if (!made) return true;
  return [...sources, settings].some((source) => newest(join(root, source)) > made.mtimeMs);
}

/** When a file or anything in a folder was last changed; built files and packages apart. */
function newest(path: string): number {
  const found = statSync(path, { throwIfNoEntry: false });
  if (!found?.isDirectory()) return found?.mtimeMs ?? 0;
  const inside = readdirSync(path).filter(
    (name) => name !== 'dist' && name !== 'node_modules' && !name.startsWith('.'),
  );
  // A folder that holds built files changes by building alone.
  const own = existsSync(join(path, 'dist')) ? 0 : found.mtimeMs;
  return Math.max(own, ...inside.map((name) => newest(join(path, name))));
}
