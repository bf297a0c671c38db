import { unreachable } from '#shared-calc/result.ts';
import type { Finding } from './check-book.ts';
import { sayRecord } from '#shared-calc/words/say-record-fault.ts';
import { sayEditFault } from './say-book-fault.ts';

/** What a check of the book found, in a sentence. */
export function sayFinding(finding: Finding): string {
  switch (finding.kind) {
    case 'file':
      return `The file itself: ${finding.says}.`;
    case 'record':
      return `A record cannot be read: ${sayRecord(finding.record)}.`;
    case 'reference':
      return sayEditFault(finding.fault);
    case 'loose-row':
      return `A row of ${finding.table} names nothing in ${finding.parent}.`;
    case 'issued-altered':
      return `Quote ${finding.number}${finding.revision} no longer says what was issued.`;
    case 'number-not-noted':
      return `Quote ${finding.number}${finding.revision} stands outside the list of numbers used.`;
    case 'journal-gap':
      return `The journal has ${finding.rows} edits where the book is at revision ${finding.revision}.`;
    case 'journal-differs':
      return `The journal does not lead to ${sayRecord(finding.record)} as it stands.`;
    case 'journal-unreadable':
      return `Edit ${finding.revision} of the journal cannot be read.`;
    default:
      return unreachable(finding);
  }
}
