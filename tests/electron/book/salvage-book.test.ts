import { copyFileSync, mkdirSync, readFileSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { readSalvage, salvageBook } from '#electron/book/salvage-book.ts';
import { reopen, temporaryFolder, valueOf } from '#tests/electron/book/book-at-hand.ts';
import { listRecords, sortRecords, today } from '#tests/electron/book/sample-records.ts';
import { writeDemoBook } from '#tests/write-demo-book.ts';

function demoBook(): string {
  const path = join(temporaryFolder(), 'Shop.loamwright');
  writeDemoBook(path, today);
  return path;
}

function zero(path: string, from: number, bytes: number): void {
  const whole = readFileSync(path);
  writeFileSync(path, whole.fill(0, from, from + bytes));
}

/** Sums over all kinds of what came of a file. */
function sumsOf(path: string) {
  const { kinds, knowsLost } = valueOf(readSalvage(path, { today }));
  const sum = (of: (kind: (typeof kinds)[number]) => number) => kinds.reduce((so, kind) => so + of(kind), 0);
  return {
    own: sum(({ came, filled }) => came - filled),
    filled: sum(({ filled }) => filled),
    lost: sum(({ lost }) => lost.length),
    altered: sum(({ altered }) => altered.length),
    knowsLost,
  };
}

const spoilt: readonly (readonly [string, (path: string) => void, (total: number) => unknown])[] = [
  ['nothing wrong with it', () => undefined, (total) => ({ own: total, lost: 0, knowsLost: true })],
  ['its first page destroyed', (path) => zero(path, 0, 4096), (total) => ({ own: total, lost: 0, knowsLost: false })],
];

describe('readSalvage', () => {
  test.each(spoilt)('a book with %s gives every record', (_, spoil, gives) => {
    const path = demoBook();
    const total = sumsOf(path).own;
    spoil(path);

    expect(total).toBeGreaterThan(500);
    expect(sumsOf(path)).toMatchObject({ ...Object(gives(total)), filled: 0, altered: 0 });
  });

  test.each([
    ['cut off in the middle', (path: string) => truncateSync(path, Math.floor(readFileSync(path).length / 2))],
    ['with a part of zeros', (path: string) => zero(path, readFileSync(path).length >> 1, 40_000)],
  ])('of a book %s the rest comes as it was, and a backup fills what does not', (_, spoil) => {
    const path = demoBook();
    const before = reopen(path);
    const was = before.records();
    const total = Object.values(was).reduce((sum: number, of) => sum + of.size, 0);
    before.close();
    const whole = readFileSync(path);
    spoil(path);
    const alone = sumsOf(path);
    mkdirSync(join(dirname(path), 'Shop backups'));
    writeFileSync(join(dirname(path), 'Shop backups', 'Shop 2027-03-09.loamwright'), whole);
    const filled = sumsOf(path);

    expect(alone).toMatchObject({ filled: 0, altered: 0, knowsLost: false });
    expect(alone.own).toBeLessThan(total);
    expect([filled.own + filled.filled, filled.lost]).toEqual([total, 0]);
    expect(sortRecords(valueOf(readSalvage(path, { today })).records)).toEqual(sortRecords(was));
  });
});

describe('salvageBook', () => {
  test('what a file gives is a sound book of its own, in which no number of a quote comes again', () => {
    const path = demoBook();
    const spoiltAt = readFileSync(path).length >> 1;
    zero(path, spoiltAt, 40_000);
    const before = readFileSync(path);
    const book = valueOf(salvageBook(path, { today, backups: false }));

    expect(book.path).toBe(join(dirname(path), `Shop salvaged ${today}.loamwright`));
    expect(book.check()).toMatchObject({ value: { sound: true } });
    book.close();
    expect(readFileSync(path).equals(before)).toBe(true);
  });

  test('a damaged book of an earlier form is brought forward', () => {
    const path = join(temporaryFolder(), 'Old.loamwright');
    copyFileSync(fileURLToPath(new URL('../../../fixtures/books/v17.loamwright', import.meta.url)), path);
    zero(path, 0, 16);
    const book = valueOf(salvageBook(path, { today, backups: false }));
    const { tank, issuedQuote } = book.records();

    expect([tank.get('T07')?.insideLengthMm, issuedQuote.size, book.nextQuote().number]).toEqual([900, 1, 'Q-0002']);
    book.close();
  });

  test('with nothing to read there is a workshop without a figure', () => {
    const path = demoBook();
    zero(path, 0, readFileSync(path).length);
    const book = valueOf(salvageBook(path, { today, backups: false }));

    expect(listRecords(book.records())).toEqual({ workshop: [expect.objectContaining({ name: '' })] });
    book.close();
    rmSync(path);
  });
});
