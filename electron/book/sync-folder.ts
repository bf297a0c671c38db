import { readdirSync } from 'node:fs';
import { basename, dirname, extname, join, resolve } from 'node:path';
import { codeOf } from './storage-fault.ts';

/** Signs that another program syncs a folder to other machines. */
export interface SyncFolder {
  /** Copies of the book in its folder, created when two machines wrote at once. */
  readonly conflictCopies: readonly string[];
  /** Folders above the book whose name or hidden files show that they are synced. */
  readonly folders: readonly string[];
}

const conflict = /conflict/i;
const spokenName = /(^|[^a-z])sync|(cloud|drive|box)\b/i;
const hiddenMarker = /^\.(st(folder|ignore|versions)$|.*sync|\w*box(\.|$))/i;

/** Signs of a sync program around a book; `undefined` if there are none. */
export function syncFolderOf(path: string): SyncFolder | undefined {
  const file = resolve(path);
  const conflictCopies = listFolder(dirname(file)).filter((name) => isConflictCopy(file, name));
  const folders = foldersAbove(file).filter(isStoredAlike);
  return conflictCopies.length + folders.length > 0 ? { conflictCopies, folders } : undefined;
}

function isConflictCopy(file: string, name: string): boolean {
  const own = basename(file);
  const stem = basename(file, extname(file));
  return (
    name !== own && name.startsWith(stem) && name.includes(extname(file)) && conflict.test(name.slice(stem.length))
  );
}

function foldersAbove(file: string): readonly string[] {
  const folder = dirname(file);
  return folder === file ? [] : [folder, ...foldersAbove(folder)];
}

function isStoredAlike(folder: string): boolean {
  return spokenName.test(basename(folder)) || listFolder(folder).some((name) => hiddenMarker.test(name));
}

function listFolder(folder: string): readonly string[] {
  try {
    return readdirSync(join(folder));
  } catch (error) {
    // A folder further up may be unreadable; then it shows no signs.
    if (!['EACCES', 'EPERM', 'ENOENT'].includes(codeOf(error))) throw error;
    return [];
  }
}
