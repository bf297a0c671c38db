import { existsSync } from 'node:fs';
import type { BookFault, EditFault } from '#shared-calc/records/book-fault.ts';
import { type Added, type Change, emptyChange } from '#shared-calc/records/change.ts';
import { diffRecords } from '#shared-calc/records/diff-records.ts';
import type { Beginning } from '#shared-calc/contract/beginnings.ts';
import { emptyRecords as noRecords } from '#shared-calc/records/records.ts';
import { failed, type Result } from '#shared-calc/result.ts';
import { listBackups } from './backups.ts';
import type { Book } from './book.ts';
import { createBook } from './create-book.ts';
import { openBook } from './open-book.ts';
import type { OpenOptions } from './open-options.ts';
import { emptyRecords, houseRecords } from './own-book.ts';
import { type DemoFault, readDemo } from './read-demo.ts';
import { readFullDemo } from './read-full-demo.ts';

export interface SeedOptions extends OpenOptions {
  /** Folder of the demo workshop's files; by default the one in the source tree. */
  readonly demoFolder?: string;
}

type Made = Result<Book, BookFault | EditFault | DemoFault>;

/** Creates a book of the demo workshop and opens it. */
export function makeDemoBook(path: string, options: SeedOptions): Made {
  return makeBook(path, options, 'demo workshop', (records) => records);
}

/**
 * Creates a book of the demo workshop in full swing and opens it: what people see first. Its days count from today, so
 * that on every day there is something to do.
 */
export function makeFullBook(path: string, options: SeedOptions): Made {
  const { demoFolder, ...opening } = options;
  const told = readFullDemo(options.today, demoFolder);
  if (!told.ok) return told;
  return createBook(path, {
    ...opening,
    begin: diffRecords('workshop in full swing', noRecords, told.value.records),
  });
}

/**
 * Opens a book; where there is none it is made in full swing. One that another program made meanwhile is opened: two that
 * start at once share it.
 */
export function openOrMakeBook(path: string, options: SeedOptions): Made {
  const { demoFolder: _, ...opening } = options;
  // One that has backups was lost, and is not to be covered up by a demo.
  if (!existsSync(path) && listBackups(path).length > 0) return failed({ kind: 'missing' });
  const made = existsSync(path) ? undefined : makeFullBook(path, options);
  return made === undefined || (!made.ok && made.fault.kind === 'exists') ? openBook(path, opening) : made;
}

/** How a new book begins; guesses are for `house` alone. */
export interface Begun {
  readonly start: Beginning;
  readonly guesses?: boolean | undefined;
}

/** Creates a book that begins as asked, and opens it. */
export function beginBook(path: string, { start, guesses = false }: Begun, options: SeedOptions): Made {
  switch (start) {
    case 'full':
      return makeFullBook(path, options);
    case 'plain':
      return makeDemoBook(path, options);
    case 'house':
      return makeBook(path, options, 'own workshop', (demo) => houseRecords(demo, { guesses }));
    case 'empty':
      return makeBook(path, options, 'own workshop', emptyRecords);
  }
}

function makeBook(
  path: string,
  options: SeedOptions,
  label: string,
  choose: (records: readonly Added[]) => readonly Added[],
): Made {
  const { demoFolder, ...opening } = options;
  const demo = readDemo(options.today, demoFolder);
  if (!demo.ok) return demo;
  const begin: Change = { ...emptyChange(label), added: choose(demo.value) };
  return createBook(path, { ...opening, begin });
}
