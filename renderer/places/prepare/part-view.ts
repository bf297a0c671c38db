import type { BookContext } from '#renderer/books/book-api.ts';
import type { Job } from '#shared-calc/records/records.ts';
import type { PrepareState } from './prepare-state.ts';

/** What a part of the prep plan place is shown with. */
export interface PartView {
  readonly state: PrepareState;
  readonly context: BookContext;
  readonly job: Job | undefined;
  /** A size, a batch, a card that the link names, and one of its things. */
  readonly of: string | undefined;
  readonly one: string | undefined;
}
