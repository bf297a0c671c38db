import { expect, test } from 'vitest';
import { makeFullBook } from '#electron/book/seed-demo.ts';
import { temporaryFolder, valueOf } from '#tests/electron/book/book-at-hand.ts';
import { today } from '#tests/electron/book/sample-records.ts';
import { flipBits } from '#tests/faults/flip-bits.ts';
import { join } from 'node:path';

test('1,000 flipped bits in a book in full swing: none alters a figure in silence', () => {
  const folder = temporaryFolder();
  const book = valueOf(makeFullBook(join(folder, 'Full.loamwright'), { today, backups: false }));
  const rate = book.records().rate.get('R-builder');
  if (!rate) throw new Error('no rate');
  const to = { ...rate, coins: (rate.coins ?? 0) + 100 };
  valueOf(
    book.apply({ label: 'rate', added: [], updated: [{ kind: 'rate', from: rate, to }], removed: [] }, book.revision()),
  );
  book.close();
  const counts = flipBits(book.path, folder, 1_000);
  process.stdout.write(`1,000 flips: ${JSON.stringify(counts)}\n`);

  expect(counts).toMatchObject({ silent: 0 });
}, 1_200_000);
