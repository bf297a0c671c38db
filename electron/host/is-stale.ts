import { readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** A build result, its sources, and its build settings. */
export interface Bundle {
  readonly name: string;
  readonly settings: string;
  readonly sources: readonly string[];
  /** This file exists and is newer than every source after a build. */
  readonly built: string;
}

/** The project's root folder. */
export const projectFolder = fileURLToPath(new URL('../../', import.meta.url));

/** Whether a bundle is missing or older than a source. Folders count, so that a removed file is noticed. */
export function isStale(root: string, { sources, settings, built }: Bundle): boolean {
  const made = statSync(join(root, built), { throwIfNoEntry: false });
  if (!made) return true;
  return [...sources, settings].some((source) => newest(join(root, source)) > made.mtimeMs);
}

/** The last change of a file or of anything in a folder; built files and packages are ignored. */
function newest(path: string): number {
  const found = statSync(path, { throwIfNoEntry: false });
  if (!found?.isDirectory()) return found?.mtimeMs ?? 0;
  const inside = readdirSync(path);
  // The time of a folder with built files changes on every build.
  const own = inside.includes('dist') ? 0 : found.mtimeMs;
  const sources = inside.filter((name) => name !== 'dist' && name !== 'node_modules' && !name.startsWith('.'));
  return Math.max(own, ...sources.map((name) => newest(`${path}/${name}`)));
}
