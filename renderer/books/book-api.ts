import type { BookStore } from '#renderer/store/book-store.ts';
import type { Derived } from '#shared-calc/derive/derived.ts';

/** What the quiet places need of the store. */
export type BookApi = Pick<BookStore, 'records' | 'derived' | 'info' | 'doAct' | 'say' | 'refuse'>;

/** The book at one moment. */
export type BookContext = Derived;

/** The same from the store; called within a component its signal is followed. */
export function contextNow({ derived }: Pick<BookApi, 'derived'>): BookContext {
  return derived.value;
}
