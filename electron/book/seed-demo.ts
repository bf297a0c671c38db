import type { BookFault, EditFault } from '#shared-calc/records/book-fault.ts';
import { type Added, type Change, emptyChange } from '#shared-calc/records/change.ts';
import type { RecordKind } from '#shared-calc/records/records.ts';
import type { Result } from '#shared-calc/result.ts';
import type { Book } from './book.ts';
import { createBook } from './create-book.ts';
import type { OpenOptions } from './open-options.ts';
import { type DemoFault, readDemo } from './read-demo.ts';

export interface SeedOptions extends OpenOptions {
  /** Where the demo workshop's files are, if not beside the program's source. */
  readonly demoFolder?: string;
}

type Made = Result<Book, BookFault | EditFault | DemoFault>;

/** Makes a book of the demo workshop and opens it. */
export function makeDemoBook(path: string, options: SeedOptions): Made {
  return makeBook(path, options, 'demo workshop', (records) => records);
}

/**
 * Makes a book for a workshop of one's own and opens it: recipes, tanks, goods, plants, cultures, rates and margins
 * stay, names, suppliers, prices, store and jobs do not.
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

const leftOut: readonly RecordKind[] = [
  'supplier',
  'packPrice',
  'closedDay',
  'job',
  'size',
  'localValue',
  'stockEntry',
];

function isKept({ kind }: Added): boolean {
  return !leftOut.includes(kind);
}

function makePlain(each: Added): Added {
  if (each.kind === 'workshop') {
    return { ...each, record: { ...each.record, name: '', place: '', letterhead: '', payment: '' } };
  }
  if (each.kind === 'plant') return { ...each, record: { ...each.record, priceCoins: 0 } };
  if (each.kind === 'tank') return { ...each, record: withoutSupplier(each.record) };
  if (each.kind === 'material') return { ...each, record: withoutSupplier(each.record) };
  return each;
}

function withoutSupplier<R extends { readonly supplier?: string | undefined }>(record: R): Omit<R, 'supplier'> {
  const { supplier: _, ...rest } = record;
  return rest;
}
