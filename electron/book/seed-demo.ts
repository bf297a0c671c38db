import { existsSync } from 'node:fs';
import type { BookFault, EditFault } from '#shared-calc/records/book-fault.ts';
import { type Added, type Change, emptyChange } from '#shared-calc/records/change.ts';
import { diffRecords } from '#shared-calc/records/diff-records.ts';
import { emptyRecords, type RecordKind } from '#shared-calc/records/records.ts';
import type { Result } from '#shared-calc/result.ts';
import type { Book } from './book.ts';
import { createBook } from './create-book.ts';
import { openBook } from './open-book.ts';
import type { OpenOptions } from './open-options.ts';
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
    begin: diffRecords('workshop in full swing', emptyRecords, told.value.records),
  });
}

/**
 * Opens a book; where there is none it is made in full swing. One that another program made meanwhile is opened: two that
 * start at once share it.
 */
export function openOrMakeBook(path: string, options: SeedOptions): Made {
  const { demoFolder: _, ...opening } = options;
  const made = existsSync(path) ? undefined : makeFullBook(path, options);
  return made === undefined || (!made.ok && made.fault.kind === 'exists') ? openBook(path, opening) : made;
}

/**
 * Creates a book for the user's own workshop and opens it. It has the demo's recipes, tanks, goods, plants, cultures,
 * animals, rates and margins, but no names, suppliers, prices, Store or jobs.
 */
export function makePlainBook(path: string, options: SeedOptions): Made {
  return makeBook(path, options, 'new workshop', (records) => records.filter(isKept).map(makePlain));
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

const leftOut: readonly RecordKind[] = ['supplier', 'packPrice', 'closedDay', 'job', 'size', 'localValue', 'move'];

function isKept({ kind }: Added): boolean {
  return !leftOut.includes(kind);
}

function makePlain(each: Added): Added {
  if (each.kind === 'workshop') {
    return { ...each, record: { ...each.record, name: '', place: '', letterhead: '', payment: '' } };
  }
  if (each.kind === 'tank') return { ...each, record: withoutSupplier(each.record) };
  if (each.kind === 'material') return { ...each, record: withoutSupplier(each.record) };
  if (each.kind === 'pack') return { ...each, record: withoutSupplier(each.record) };
  return each;
}

function withoutSupplier<R extends { readonly supplier?: string | undefined }>(record: R): Omit<R, 'supplier'> {
  const { supplier: _, ...rest } = record;
  return rest;
}
