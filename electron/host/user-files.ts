import { dirname, join, resolve } from 'node:path';

import { ownBookPath } from '#electron/book/own-book-path.ts';
import { lastOpened } from '#electron/service/recent-books.ts';

/** The program's files in the folder of the user's own book. */
export interface UserFiles {
  readonly recent: string;
  readonly lastPlace: string;
  readonly window: string;
  readonly log: string;
}

export function userFiles(folder: string = dirname(ownBookPath())): UserFiles {
  return {
    recent: join(folder, 'recent-books.json'),
    lastPlace: join(folder, 'last-place.json'),
    window: join(folder, 'window.json'),
    log: join(folder, 'faults.log'),
  };
}

/** The requested book; otherwise the one the page opened last, though it may be gone; otherwise the user's own. */
export function bookToOpen(asked: string | undefined, recent: string): string {
  if (asked !== undefined) return resolve(asked);
  return lastOpened(recent) ?? ownBookPath();
}
