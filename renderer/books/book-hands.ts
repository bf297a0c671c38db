import type { BookStore } from '#renderer/store/book-store.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { displayOf } from '#shared-calc/records/display-of.ts';
import type { Records, Workshop } from '#shared-calc/records/records.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';

/** What the quiet places need of the store. */
export type BookHands = Pick<BookStore, 'records' | 'info' | 'apply' | 'say' | 'refuse'>;

/** The book at one moment. */
export interface BookContext {
  readonly records: Records;
  readonly workshop: Workshop;
  readonly display: Display;
  /** `YYYY-MM-DD` */
  readonly today: string;
}

export function contextOf(records: Records, today: string): BookContext {
  const workshop = workshopOf(records);
  return { records, workshop, display: displayOf(workshop), today };
}

/** The same from the store; called within a component its signals are followed. */
export function contextNow({ records, info }: Pick<BookHands, 'records' | 'info'>): BookContext {
  return contextOf(records.value, info.value.today);
}
