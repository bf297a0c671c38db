import { wordsOfKind } from '#shared-calc/fields/kind-names.ts';
import type { FieldIssue, RecordFault, RecordName } from '#shared-calc/records/book-fault.ts';
import { capital } from '#shared-calc/rule/capital.ts';
import { sayByKind, type Sayings } from './say-by-kind.ts';

const tellAtMost = 5;

const sayings: Sayings<RecordFault> = {
  'not-valid': ({ record, issues }) => `${capital(sayRecord(record))} cannot be kept like this: ${sayIssues(issues)}.`,
  'unknown-reference': ({ record, field, id }) =>
    `${capital(sayRecord(record))} names ${id} as its ${field}, which is not in the book.`,
  'still-used': ({ record, by }) => `${capital(sayRecord(record))} is still used by ${sayRecords(by)}.`,
  'there-already': ({ record, other, fields }) =>
    `${capital(sayRecord(record))} and ${sayRecord(other)} have the same ${fields.join(' and ')}.`,
  issued: ({ record }) => `${capital(sayRecord(record))} stays as it was issued.`,
};

/** Why a record is not accepted or not removed, in one sentence. */
export function sayRecordFault(fault: RecordFault): string {
  return sayByKind(sayings, fault);
}

/** Whether a fault is about a record in its book. */
export function isRecordFault(fault: { readonly kind: string }): fault is RecordFault {
  return Object.hasOwn(sayings, fault.kind);
}

/** "tank T07" */
export function sayRecord({ kind, id }: RecordName): string {
  return kind === 'workshop' ? 'the workshop' : `${wordsOfKind(kind)} ${id}`;
}

export function sayRecords(records: readonly RecordName[]): string {
  const more = records.length - tellAtMost;
  return records.slice(0, tellAtMost).map(sayRecord).join(', ') + (more > 0 ? ` and ${more} more` : '');
}

function sayIssues(issues: readonly FieldIssue[]): string {
  return issues.map(({ field, called = field, says }) => (called === '' ? says : `${called}: ${says}`)).join('; ');
}
