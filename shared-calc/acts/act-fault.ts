import type { JobFault } from '#shared-calc/jobs/job-fault.ts';
import type { FieldIssue, RecordFault, RecordName } from '#shared-calc/records/book-fault.ts';

/** What stands against an act, and why. */
export interface Against {
  readonly what: string;
  readonly why: string;
}

/** Why an act is refused: facts, said by words/say-act-fault.ts. */
export type ActFault =
  | JobFault
  | RecordFault
  | { readonly kind: 'no-record'; readonly record: RecordName; readonly near?: string }
  /** The program itself asks for this record by its id. */
  | { readonly kind: 'needed'; readonly record: RecordName; readonly by: readonly Against[] }
  /** The coin of the currency changes every amount of the book; `rescaleCoins` does that. */
  | { readonly kind: 'coins-change'; readonly from: number; readonly to: number }
  /** An amount has parts that a coin with fewer decimals does not know. */
  | { readonly kind: 'uneven-coins'; readonly record: RecordName; readonly amount: string }
  /** The input is not what the act's schema wants; `at` is the field, empty for the whole. */
  | { readonly kind: 'bad-input'; readonly at: string; readonly issues: readonly FieldIssue[] };
