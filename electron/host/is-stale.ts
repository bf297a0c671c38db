import { readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

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
  const inside = readdirSync(path);
  // A folder that holds built files changes by building alone.
  const own = inside.includes('dist') ? 0 : found.mtimeMs;
  const sources = inside.filter((name) => name !== 'dist' && name !== 'node_modules' && !name.startsWith('.'));
  return Math.max(own, ...sources.map((name) => newest(`${path}/${name}`)));
}
