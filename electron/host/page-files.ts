import { readFileSync, realpathSync, statSync } from 'node:fs';
import { extname, isAbsolute, relative, resolve, sep } from 'node:path';

import { contentPolicy, freshNonce, guardHeaders, withNonce } from './content-policy.ts';

/** The response for a file of the page, for a loopback address and the desktop's own scheme. */
export interface PageAnswer {
  readonly status: 200 | 404;
  readonly headers: Readonly<Record<string, string>>;
  readonly body: string | Uint8Array<ArrayBuffer>;
}

const kinds: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
  '.md': 'text/plain; charset=utf-8',
};

/** Reads a file of the page's folder by the path of its link; a path outside the folder is not found. */
export function readPageFile(folder: string, path: string): PageAnswer {
  const file = findPageFile(folder, path);
  if (file === undefined) return notThere;
  const kind = kinds[extname(file).toLowerCase()];
  if (kind === undefined) return notThere;
  if (extname(file) === '.html') return readPage(file, kind);
  // Built files have a hash of their content in their name, except the list of licences.
  const caching = file.includes(`${sep}assets${sep}`) ? 'private, max-age=31536000, immutable' : 'no-cache';
  const body = new Uint8Array(readFileSync(file));
  return { status: 200, headers: { ...guardHeaders, 'content-type': kind, 'cache-control': caching }, body };
}

function readPage(file: string, kind: string): PageAnswer {
  const nonce = freshNonce();
  const headers = {
    ...guardHeaders,
    'content-type': kind,
    'content-security-policy': contentPolicy(nonce),
    'cache-control': 'no-store',
  };
  return { status: 200, headers, body: withNonce(readFileSync(file, 'utf8'), nonce) };
}

const notThere: PageAnswer = {
  status: 404,
  headers: { ...guardHeaders, 'content-type': 'text/plain; charset=utf-8', 'cache-control': 'no-store' },
  body: 'There is no such page.\n',
};

/** The file for a link's path, with symbolic links resolved; `undefined` if it is outside the folder. */
export function findPageFile(folder: string, path: string): string | undefined {
  const name = decodePath(path);
  if (name === undefined) return undefined;
  const file = resolve(folder, name === '/' ? 'index.html' : `.${name}`);
  if (!isWithin(folder, file) || !statSync(file, { throwIfNoEntry: false })?.isFile()) return undefined;
  const real = realpathSync(file);
  return isWithin(realpathSync(folder), real) ? real : undefined;
}

/** Longer than the path of any file of the page, and short enough for every file system. */
const longestPath = 500;

/** Decodes a path. Refuses characters that some file system reads as a separator or a drive. */
function decodePath(path: string): string | undefined {
  if (path.length > longestPath) return undefined;
  try {
    const decoded = decodeURIComponent(path);
    return decoded.startsWith('/') && !/[\\:\0]/.test(decoded) ? decoded : undefined;
  } catch {
    // An invalid escape: not one of our files.
    return undefined;
  }
}

function isWithin(folder: string, file: string): boolean {
  const way = relative(folder, file);
  return way !== '' && way !== '..' && !way.startsWith(`..${sep}`) && !isAbsolute(way);
}
