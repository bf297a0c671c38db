import type { BookContext } from '#renderer/books/book-api.ts';
import type { Job } from '#shared-calc/records/records.ts';
import type { PrepareState } from './prepare-state.ts';

/** The input of a part of the prep plan view. */
export interface PartView {
  readonly state: PrepareState;
  readonly context: BookContext;
  readonly job: Job | undefined;
  /** A size, a batch or a card that the link names, and one of its items. */
  readonly of: string | undefined;
  readonly one: string | undefined;
}
