import { capital } from '#shared-calc/rule/capital.ts';
import type { BookFault, Damage, EditFault } from '#shared-calc/records/book-fault.ts';
import { sayByKind, type Sayings } from '#shared-calc/words/say-by-kind.ts';
import { sayRecord, sayRecordFault, sayRecords } from '#shared-calc/words/say-record-fault.ts';
import type { DemoFault } from './read-demo.ts';

type Fault = BookFault | EditFault | DemoFault;

const notBooks = {
  other: '',
  empty: ' but an empty file',
  folder: ' but a folder',
  device: ' but a device or a pipe',
} as const;

const sayings: Sayings<Fault, [book: string]> = {
  gone: ({ how }, book) =>
    how === 'written over'
      ? `${book} was written over by hand while it was open. Nothing more is written; open what is there now.`
      : `${book} was ${how === 'removed' ? 'removed or renamed' : 'replaced by another file'} while it was open. Nothing more is written; put it back, or open another book.`,
  locked: (_, book) => `Another program is writing in ${book}; try again when it is done.`,
  'no-room': (_, book) => `There is no room left on the disk for ${book}.`,
  'read-only': ({ what }, book) =>
    what === 'file'
      ? `${book} may only be read.`
      : `The folder of ${book} may only be read, so ${book} cannot be written.`,
  'no-access': (_, book) => `${book} is closed to this user.`,
  damaged: ({ damage }, book) =>
    `${book} is damaged: ${sayDamage(damage)}. It was left as it is; a backup can take its place: book recover.`,
  disk: ({ code }, book) => `The disk failed at ${book} (${code}).`,
  'no-folder': (_, book) => `The folder of ${book} is not there.`,
  missing: (_, book) => `There is no book at ${book}.`,
  'not-a-book': ({ what }, book) => `${book} is not a book${notBooks[what]}.`,
  foreign: (_, book) => `${book} is another program's file, not a book.`,
  newer: ({ found, newest }, book) =>
    `${book} was written by a newer Loamwright (form ${found}, this one knows up to ${newest}).`,
  'migration-failed': ({ version, name, says }, book) =>
    `${book} could not be brought to form ${version}, ${name} (${says}). It was left in its old form.`,
  exists: (_, book) => `${book} is there already.`,
  'in-use': (_, book) => `${book} is open.`,
  'changed-elsewhere': ({ records }) => `Changed in another window meanwhile: ${sayRecords(records)}.`,
  ahead: ({ onRevision, revision }) => `The edit was made on revision ${onRevision}, and the book is at ${revision}.`,
  'id-taken': ({ records }) => `There already: ${sayRecords(records)}.`,
  'touched-twice': ({ record }) => `One edit changes ${sayRecord(record)} twice.`,
  'not-valid': sayRecordFault,
  'unknown-reference': sayRecordFault,
  'still-used': sayRecordFault,
  'there-already': sayRecordFault,
  issued: sayRecordFault,
  'hash-wrong': ({ record }) => `${capital(sayRecord(record))} does not match its own hash.`,
  'number-used': ({ number, revision }) =>
    `Quote ${number}${revision} has been issued before, and a number is used once.`,
  lasting: ({ label }) => `This is not undone: ${label}.`,
  'demo-unreadable': ({ file, says }) => `The demo workshop cannot be read: ${file}, ${says}.`,
};

/** One sentence for people; `path` is the book's. */
export function sayBookFault(fault: Fault, path: string): string {
  return sayByKind(sayings, fault, path);
}

/** The same for an edit of the open book. */
export function sayEditFault(fault: EditFault | BookFault): string {
  return capital(sayBookFault(fault, 'the book'));
}

function sayDamage(damage: Damage): string {
  if (damage.what === 'pages') return 'parts of the file cannot be read';
  if (damage.what === 'tables') return 'it is not made up as a book is';
  if (damage.what === 'journal') return `its journal cannot be read at revision ${damage.revision}`;
  return `these do not say what they should: ${sayRecords(damage.records)}`;
}
