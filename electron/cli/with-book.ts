import { existsSync, mkdirSync } from 'node:fs';
import path from 'node:path';
import type { Book } from '#electron/book/book.ts';
import { openBook } from '#electron/book/open-book.ts';
import { ownBookPath } from '#electron/book/own-book-path.ts';
import { makeDemoBook } from '#electron/book/seed-demo.ts';
import { sayBookFault } from '#electron/book/say-book-fault.ts';
import type { Outcome } from './outcome.ts';
import type { Arguments, OptionTable } from './read-arguments.ts';
import { today } from '#electron/service/today.ts';

export const bookOption = { book: 'text' } as const satisfies OptionTable;

interface Opening {
  /** Where there is no such file: make it from the demo, or say so. */
  readonly whenMissing: 'make' | 'refuse';
}

/** Runs over the book that `--book` names, or the user's own, and closes it again. */
export async function withBook(
  given: Arguments,
  { whenMissing }: Opening,
  run: (book: Book) => Outcome | Promise<Outcome>,
): Promise<Outcome> {
  const file = given.text('book') ?? ownBookPath();
  const opened = existsSync(file) || whenMissing === 'refuse' ? openBook(file, { today: today() }) : makeBook(file);
  if (!opened.ok) return { is: 'no book', says: sayBookFault(opened.fault, file) };
  try {
    return await run(opened.value);
  } finally {
    opened.value.close();
  }
}

function makeBook(file: string): ReturnType<typeof makeDemoBook> {
  if (file === ownBookPath()) mkdirSync(path.dirname(file), { recursive: true });
  return makeDemoBook(file, { today: today() });
}
