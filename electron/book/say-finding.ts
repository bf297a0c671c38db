import { capital } from '#shared-calc/rule/capital.ts';
import { sayByKind, type Sayings } from '#shared-calc/words/say-by-kind.ts';
import { sayRecord } from '#shared-calc/words/say-record-fault.ts';
import type { Finding } from './check-book.ts';
import { sayRow } from './say-altered.ts';
import { sayEditFault } from './say-book-fault.ts';

const sayings: Sayings<Finding> = {
  file: ({ says }) => `The file itself: ${says}.`,
  record: ({ record }) => `A record cannot be read: ${sayRecord(record)}.`,
  reference: ({ fault }) => sayEditFault(fault),
  'loose-row': ({ table, parent }) => `A row of ${table} names nothing in ${parent}.`,
  'issued-altered': ({ number, revision }) => `Quote ${number}${revision} no longer says what was issued.`,
  'number-not-noted': ({ number, revision }) => `Quote ${number}${revision} stands outside the list of numbers used.`,
  'row-altered': ({ row }) => `${capital(sayRow(row))} is not as it was last written.`,
  'journal-gap': ({ rows, revision }) => `The journal has ${rows} edits where the book is at revision ${revision}.`,
  'journal-differs': ({ record }) => `The journal does not lead to ${sayRecord(record)} as it stands.`,
  'journal-unreadable': ({ revision }) => `Edit ${revision} of the journal cannot be read.`,
};

/** What a check of the book found, in a sentence. */
export function sayFinding(finding: Finding): string {
  return sayByKind(sayings, finding);
}
