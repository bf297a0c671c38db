import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { migrations } from '#electron/book/migrations/all.ts';
import { temporaryFolder } from '#tests/electron/book/book-at-hand.ts';
import { flipBits } from '#tests/faults/flip-bits.ts';

const kept = new URL(`../../fixtures/books/v${migrations.length}.loamwright`, import.meta.url);

test('of a book with one flipped bit nothing is read that was not written, unless it is said', () => {
  const counts = flipBits(fileURLToPath(kept), temporaryFolder(), 40);
  process.stdout.write(`40 flips: ${JSON.stringify(counts)}\n`);

  expect(counts.silent).toBe(0);
  expect(counts.told).toBeGreaterThan(0);
});
