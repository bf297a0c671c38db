import type { BookStore } from '#renderer/store/book-store.ts';
/** What one part of a dialog needs: the door to the file, and a way to be done. */
export interface FilePart {
  readonly api: Pick<BookStore, 'call' | 'say' | 'restore'>;
  readonly done: () => void;
}
