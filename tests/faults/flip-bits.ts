import { copyFileSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Book } from '#electron/book/book.ts';
import { openBook } from '#electron/book/open-book.ts';
import { mapKinds } from '#shared-calc/records/records.ts';
import { today } from '#tests/electron/book/sample-records.ts';

/** What came of flipped bits: nobody was told of the last. */
export interface FlipCounts {
  refused: number;
  told: number;
  harmless: number;
  silent: number;
}

/** Flips one bit in a copy of a book, this many times, and opens each copy. */
export function flipBits(path: string, folder: string, times: number): FlipCounts {
  const counts: FlipCounts = { refused: 0, told: 0, harmless: 0, silent: 0 };
  const whole = readFileSync(path);
  const copy = join(folder, 'Flipped.loamwright');
  const asWritten = opened(copyTo(path, copy), contentOf) ?? '';
  for (const bit of bits(times, whole.length * 8)) {
    const flipped = Buffer.from(whole);
    flipped.writeUInt8(flipped.readUInt8(bit >> 3) ^ (1 << (bit & 7)), bit >> 3);
    writeFileSync(copy, flipped);
    const came = opened(copy, (book) => {
      if (isTold(book)) return 'told';
      return contentOf(book) === asWritten ? 'harmless' : 'silent';
    });
    counts[came ?? 'refused'] += 1;
    if (came === undefined && !readFileSync(copy).equals(flipped))
      throw new Error(`bit ${bit}: a refused file changed`);
    for (const end of ['', '-wal', '-shm']) rmSync(copy + end, { force: true });
  }
  return counts;
}

function copyTo(path: string, copy: string): string {
  copyFileSync(path, copy);
  return copy;
}

function opened<T>(path: string, act: (book: Book) => T): T | undefined {
  const book = openBook(path, { today, backups: false });
  if (!book.ok) return undefined;
  try {
    return act(book.value);
  } finally {
    book.value.close();
  }
}

function isTold({ notes, checkHistory }: Book): boolean {
  if (notes.some(({ kind }) => kind === 'altered' || kind === 'issued-altered')) return true;
  const history = checkHistory();
  let slice = history.next();
  while (slice.done !== true) slice = history.next();
  return slice.value.length > 0;
}

/** Everything a person could read of a book. */
function contentOf({ records, entriesAfter, nextQuote, canUndo }: Book): string {
  const all = records();
  return JSON.stringify([mapKinds((kind) => [...all[kind].values()]), entriesAfter(0), nextQuote(), canUndo() ?? '']);
}

/** The same bits on every run, spread over the file. */
function* bits(times: number, all: number): Generator<number> {
  let seed = 0x2545f491;
  for (let nth = 0; nth < times; nth += 1) {
    seed = (Math.imul(seed, 1_664_525) + 1_013_904_223) >>> 0;
    yield Math.floor((seed / 2 ** 32) * all);
  }
}
