import { existsSync } from 'node:fs';
import type { Book } from '#electron/book/book.ts';
import { ownBookPath } from '#electron/book/own-book-path.ts';
import { openOrMakeBook } from '#electron/book/seed-demo.ts';
import { sayBookFault } from '#electron/book/say-book-fault.ts';
import type { Outcome } from './outcome.ts';
import type { Arguments, OptionTable } from './read-arguments.ts';
import { sayOpeningNotes } from '#electron/service/say-opening-note.ts';
import { today } from '#electron/service/today.ts';

export const bookOption = { book: 'text' } as const satisfies OptionTable;

/**
 * Runs with the book that `--book` names, or with the user's own, and closes it. Only the user's own is created
 * automatically.
 */
export async function withBook(given: Arguments, run: (book: Book) => Outcome | Promise<Outcome>): Promise<Outcome> {
  const missing = refuseMissing(given);
  if (missing) return missing;
  const file = given.text('book') ?? ownBookPath();
  const opened = openOrMakeBook(file, { today: today() });
  if (!opened.ok) return { is: 'no book', says: sayBookFault(opened.fault, file) };
  try {
    return withNotes(await run(opened.value), sayOpeningNotes(opened.value.notes, opened.value.path));
  } finally {
    opened.value.close();
  }
}

/** What the book said when it was opened stands on standard error. */
function withNotes(outcome: Outcome, notes: readonly string[]): Outcome {
  if (outcome.is !== 'answer' || notes.length === 0) return outcome;
  return { ...outcome, notices: [...notes, ...(outcome.notices ?? [])] };
}

/** A named book that does not exist is never created automatically. */
export function refuseMissing(given: Arguments): (Outcome & { readonly is: 'no book' }) | undefined {
  const file = given.text('book');
  if (file === '') return { is: 'no book', says: 'Name the book: --book FILE' };
  if (file === undefined || existsSync(file)) return undefined;
  return { is: 'no book', says: `There is no book at ${file}. To make one: book new ${file} --start plain` };
}
