import type { BookStore } from '#renderer/store/book-store.ts';
/** What one part of a dialog needs: the store, and a way to close. */
export interface FilePart {
  readonly api: Pick<BookStore, 'call' | 'say' | 'restore' | 'desktop'>;
  readonly done: () => void;
}
