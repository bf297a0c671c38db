import type { SignName } from '#renderer/frame/sign.tsx';
import type { Days } from '#renderer/kit/day-picker.tsx';
import type { Change } from '#shared-calc/records/change.ts';
import type { Option } from '#shared-calc/read/read-choice.ts';
import type { Result } from '#shared-calc/result.ts';
import type { BookContext } from './book-api.ts';

/** A row of a book: a record, and what else is shown with it. */
export interface BookRow {
  /** The record's id; constant while the row exists. */
  readonly id: string;
}

export interface BookFlag {
  readonly sign: SignName;
  readonly look: 'old' | 'watch' | 'needs';
  readonly says: string;
}

/** One field of every row. Its write returns a change of the book, or a sentence that says why not. */
export interface BookColumn<Row> {
  readonly key: string;
  readonly title: string;
  /** Shown after the title; empty if the figure needs none. */
  readonly unit: string;
  readonly look: 'figure' | 'words';
  /** Width in rem. */
  readonly width: number;
  /** As displayed. */
  readonly show: (row: Row) => string;
  /** Whether the figure of a row is shown with a unit of its own, as it was typed. */
  readonly hasUnit?: (row: Row) => boolean;
  /** The text the field opens with and copies. */
  readonly entry: (row: Row) => string;
  readonly flag?: (row: Row) => BookFlag | undefined;
  /** What rows are sorted and filtered by, if not by what is shown: a stored figure; `undefined` if it is empty. */
  readonly rank?: (row: Row) => number | string | undefined;
  /** A typed bound of a filter as a figure of `rank`. */
  readonly bound?: (text: string) => Result<number, string>;
  /** What is allowed here. */
  readonly options?: readonly Option[];
  /** The values of the options are codes that people know. */
  readonly coded?: boolean;
  /** A day: a calendar can be picked from. */
  readonly days?: Days;
  /** Absent if the field is computed or cannot change after it is made; then `closed` says why. */
  readonly write?: (row: Row, text: string) => Result<Change, string>;
  readonly closed?: string;
}

/** One field of a row. */
export interface Box<Row> {
  readonly row: Row;
  readonly column: BookColumn<Row>;
}

/** A new row with the change that makes it. */
export interface MadeRow {
  readonly id: string;
  readonly change: Change;
}

/** A book as one table: the source of its rows, and the acts on them. */
export interface BookTable<Row extends BookRow> {
  /** For screen readers: "Tank book, one tank a row". */
  readonly label: string;
  /** The id of its view in the book: a kind of record. */
  readonly view: string;
  /** A row in words: "tank". */
  readonly one: string;
  readonly rows: (context: BookContext) => readonly Row[];
  /** The first column heads the row and cannot be edited. */
  readonly columns: (context: BookContext) => readonly BookColumn<Row>[];
  /** The row's name for finding and messages: "T07 Rectangle 900 × 445 × 600". */
  readonly nameOf: (row: Row) => string;
  /** The column that is chosen when the book opens; left out: the first. */
  readonly firstColumn?: string;
  readonly add?: (context: BookContext) => MadeRow;
  readonly copy?: (context: BookContext, row: Row) => MadeRow;
  readonly remove?: (context: BookContext, rows: readonly Row[]) => Result<Change, string>;
}

export const oldPriceFlag: BookFlag = { sign: 'old', look: 'old', says: 'old price' };
