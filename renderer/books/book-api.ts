import type { BookStore } from '#renderer/store/book-store.ts';
import type { Derived } from '#shared-calc/derive/derived.ts';

/** What the book views need of the store. */
export type BookApi = Pick<BookStore, 'records' | 'derived' | 'info' | 'doAct' | 'say' | 'refuse'>;

/** The book at one moment. */
export type BookContext = Derived;

/** The current context from the store; call it within a component to follow its signal. */
export function contextNow({ derived }: Pick<BookApi, 'derived'>): BookContext {
  return derived.value;
}
