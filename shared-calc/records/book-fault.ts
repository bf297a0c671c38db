import type { RecordKind } from './records.ts';

/** A record by its name. */
export interface RecordName {
  readonly kind: RecordKind;
  readonly id: string;
}

/** What is wrong with one field: `field` is empty where it is the record as a whole. */
export interface FieldIssue {
  readonly field: string;
  readonly code: string;
  readonly says: string;
}

export type Damage =
  | { readonly what: 'pages'; readonly says: readonly string[] }
  | { readonly what: 'tables'; readonly names: readonly string[] }
  | { readonly what: 'records'; readonly records: readonly BadRecord[] }
  | { readonly what: 'journal'; readonly revision: number };

export interface BadRecord extends RecordName {
  readonly issues: readonly FieldIssue[];
}

/** What a disk or another program may do to us at any time. */
export type StorageFault =
  | { readonly kind: 'locked' }
  | { readonly kind: 'no-room' }
  | { readonly kind: 'read-only'; readonly what: 'file' | 'folder' }
  | { readonly kind: 'no-access' }
  | { readonly kind: 'damaged'; readonly damage: Damage }
  | { readonly kind: 'disk'; readonly code: string };

/** Why a book is not opened, made or written out. Whatever is refused is left as it was. */
export type BookFault =
  | StorageFault
  | { readonly kind: 'missing' }
  | { readonly kind: 'not-a-book'; readonly what: 'folder' | 'empty' | 'other' }
  | { readonly kind: 'foreign'; readonly applicationId: number }
  | { readonly kind: 'newer'; readonly found: number; readonly newest: number }
  | { readonly kind: 'migration-failed'; readonly version: number; readonly name: string; readonly says: string }
  | { readonly kind: 'exists' }
  | { readonly kind: 'in-use' };

/** What is wrong with a record as it is to stand in its book. */
export type RecordFault = Extract<
  EditFault,
  { readonly kind: 'not-valid' | 'unknown-reference' | 'still-used' | 'there-already' | 'issued' }
>;

/** Why an edit is not taken. Nothing of it is in the book then. */
export type EditFault =
  | StorageFault
  /** Another window has changed or removed these meanwhile. */
  | { readonly kind: 'changed-elsewhere'; readonly records: readonly RecordName[] }
  /** The edit says it was made on a revision that the book has not reached. */
  | { readonly kind: 'ahead'; readonly onRevision: number; readonly revision: number }
  | { readonly kind: 'id-taken'; readonly records: readonly RecordName[] }
  | { readonly kind: 'touched-twice'; readonly record: RecordName }
  | { readonly kind: 'not-valid'; readonly record: RecordName; readonly issues: readonly FieldIssue[] }
  /** `record.field` names `id`, and none of `kinds` has it. */
  | {
      readonly kind: 'unknown-reference';
      readonly record: RecordName;
      readonly field: string;
      readonly kinds: readonly RecordKind[];
      readonly id: string;
    }
  | { readonly kind: 'still-used'; readonly record: RecordName; readonly by: readonly RecordName[] }
  /** Two records that say the same in `fields`, which may stand only once. */
  | {
      readonly kind: 'there-already';
      readonly record: RecordName;
      readonly other: RecordName;
      readonly fields: readonly string[];
    }
  /** An issued quote is kept as issued. */
  | { readonly kind: 'issued'; readonly record: RecordName }
  | { readonly kind: 'hash-wrong'; readonly record: RecordName }
  | { readonly kind: 'number-used'; readonly number: string; readonly revision: string }
  /** Undo has come to an edit that is not undone. */
  | { readonly kind: 'lasting'; readonly label: string };
