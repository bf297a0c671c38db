import { copyFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import Database from 'better-sqlite3';
import { describe, expect, test } from 'vitest';
import { plantsPromised } from '#electron/book/migrations/0025-plants-promised.ts';
import { sayOpeningNotes } from '#electron/service/say-opening-note.ts';
import { readQuoteBody } from '#shared-calc/jobs/quote-body.ts';
import { quoteModel } from '#shared-calc/papers/quote-model.ts';
import { reopen, temporaryFolder } from './book-at-hand.ts';
import { today } from './sample-records.ts';

function copyOf(name: string): string {
  const path = join(temporaryFolder(), 'Shop.loamwright');
  copyFileSync(fileURLToPath(new URL(`../../../fixtures/books/${name}`, import.meta.url)), path);
  return path;
}

describe('the step to version 25', () => {
  test('quotes of a shop with jobs promise what they did, issued ones too, and it is told once', () => {
    const book = reopen(copyOf('demo/v2.loamwright'));
    const [quote] = book.records().issuedQuote.values();
    const body = readQuoteBody(quote?.body ?? '');

    expect(book.records().workshop.get('workshop')).toMatchObject({
      plantsBasicDays: 14,
      plantsFullDays: 30,
      plantsShowDays: 90,
    });
    expect(body && quoteModel(body).plantsReplacedDays).toBe(30);
    expect(sayOpeningNotes(book.notes, book.path).filter((says) => says.includes('replaced once'))).toHaveLength(1);
    book.close();
    expect(reopen(book.path).notes).toEqual([]);
  });

  test('a shop that has no job yet begins without a promise', () => {
    const db = new Database(':memory:');
    db.prepare('ATTACH ? AS before').run(copyOf('v24.loamwright'));
    db.exec(
      'CREATE TABLE workshop AS SELECT * FROM before.workshop; CREATE TABLE job (id); CREATE TABLE issued_quote (id)',
    );
    const told: unknown[] = [];
    plantsPromised.up(db, (note) => told.push(note), today);

    expect(
      db.prepare('SELECT plants_basic_days, plants_full_days, plants_show_days FROM workshop').raw().all(),
    ).toEqual([[null, null, null]]);
    expect(told).toEqual([]);
    db.close();
  });
});
