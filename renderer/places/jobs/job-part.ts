import type { BookContext } from '#renderer/books/book-hands.ts';
import type { Job } from '#shared-calc/records/records.ts';
import type { MoneyHands } from '#renderer/store/money-hands.ts';

/** What each part of a job's card is made from. */
export interface JobPart {
  readonly job: Job;
  readonly context: BookContext;
  readonly hands: MoneyHands;
}
