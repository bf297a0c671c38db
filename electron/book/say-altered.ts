import { allKinds } from '#shared-calc/records/records.ts';
import { sayRecord } from '#shared-calc/words/say-record-fault.ts';
import type { AlteredRow } from './checksums.ts';
import { sqlName } from './tables.ts';

const tellAtMost = 5;

/** "tank T07", "edit 12 of the journal", "the number of quote Q-0001 A" */
export function sayRow({ table, key }: AlteredRow): string {
  if (table === 'journal') return `edit ${key} of the journal`;
  if (table === 'quote_number') return `the number of quote ${key}`;
  const kind = allKinds.find((each) => sqlName(each) === table);
  return kind ? sayRecord({ kind, id: key }) : `${key} of ${table}`;
}

/** What is altered in a book, and the ways out. */
export function sayAltered(rows: readonly AlteredRow[], book: string): string {
  const more = rows.length - tellAtMost;
  const named = rows.slice(0, tellAtMost).map(sayRow).join(', ') + (more > 0 ? ` and ${more} more` : '');
  return `${book} holds what Loamwright did not write: ${named}. The disk or another program has changed it, and no backup is made of it. Bring a backup back (book restore DAY), or keep what is there now (book check --accept).`;
}
