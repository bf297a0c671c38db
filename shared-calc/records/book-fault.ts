import type { RecordKind } from './records.ts';

export interface RecordName {
  readonly kind: RecordKind;
  readonly id: string;
}

/** What is wrong with one field; `field` is empty for the record as a whole. */
export interface FieldIssue {
  /** The field's name, if `says` is in its words. */
  readonly called?: string;
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

/** `removed` is also said of a file that was renamed; `written over` of one whose bytes were replaced by hand. */
export type GoneHow = 'removed' | 'replaced' | 'written over';

/** Faults of the disk or of another program, possible at any time. */
export type StorageFault =
  /** The file is no longer the one that was opened; what is edited now would be lost. */
  | { readonly kind: 'gone'; readonly how: GoneHow }
  | { readonly kind: 'locked' }
  | { readonly kind: 'no-room' }
  | { readonly kind: 'read-only'; readonly what: 'file' | 'folder' }
  | { readonly kind: 'no-access' }
  | { readonly kind: 'damaged'; readonly damage: Damage }
  | { readonly kind: 'disk'; readonly code: string };

/** Why a book is open for looking alone. */
export type LookingFault = Extract<StorageFault, { readonly kind: 'read-only' | 'locked' }>;

/** Why a book is not opened, created or written out. A refused book is unchanged. */
export type BookFault =
  | StorageFault
  | { readonly kind: 'missing' }
  | { readonly kind: 'no-folder' }
  | { readonly kind: 'not-a-book'; readonly what: 'folder' | 'device' | 'empty' | 'other' }
  | { readonly kind: 'foreign'; readonly applicationId: number }
  | { readonly kind: 'newer'; readonly found: number; readonly newest: number }
  | { readonly kind: 'migration-failed'; readonly version: number; readonly name: string; readonly says: string }
  | { readonly kind: 'exists' }
  | { readonly kind: 'in-use' };

/** What is wrong with a record in its book. */
export type RecordFault = Extract<
  EditFault,
  { readonly kind: 'not-valid' | 'unknown-reference' | 'still-used' | 'there-already' | 'issued' }
>;

/** Why an edit is refused. Then nothing of it is in the book. */
export type EditFault =
  | StorageFault
  /** Another window has changed or removed these in the meantime. */
  | { readonly kind: 'changed-elsewhere'; readonly records: readonly RecordName[] }
  /** The edit names a revision that the book has not reached. */
  | { readonly kind: 'ahead'; readonly onRevision: number; readonly revision: number }
  | { readonly kind: 'id-taken'; readonly records: readonly RecordName[] }
  | { readonly kind: 'touched-twice'; readonly record: RecordName }
  | { readonly kind: 'not-valid'; readonly record: RecordName; readonly issues: readonly FieldIssue[] }
  /** `record.field` refers to `id`, and none of `kinds` has it. */
  | {
      readonly kind: 'unknown-reference';
      readonly record: RecordName;
      readonly field: string;
      readonly kinds: readonly RecordKind[];
      readonly id: string;
    }
  | { readonly kind: 'still-used'; readonly record: RecordName; readonly by: readonly RecordName[] }
  /** Two records with the same `fields`, which must be unique. */
  | {
      readonly kind: 'there-already';
      readonly record: RecordName;
      readonly other: RecordName;
      readonly fields: readonly string[];
    }
  /** An issued quote is immutable. */
  | { readonly kind: 'issued'; readonly record: RecordName }
  | { readonly kind: 'hash-wrong'; readonly record: RecordName }
  | { readonly kind: 'number-used'; readonly number: string; readonly revision: string }
  /** The next edit to undo is one that cannot be undone. */
  | { readonly kind: 'lasting'; readonly label: string };
