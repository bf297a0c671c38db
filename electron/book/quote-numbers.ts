import type Database from 'better-sqlite3';
import { z } from 'zod';
import { isUnsent } from '#shared-calc/jobs/issue-quote.ts';
import type { IssuedQuote } from '#shared-calc/records/records.ts';
import { rowSummer } from './checksums.ts';

const Text = z.string();

export interface QuoteNumber {
  readonly number: string;
  readonly revision: string;
}

/** A number with the hash of the quote that had it. */
export type UsedNumber = Pick<IssuedQuote, 'number' | 'revision' | 'sha256'>;

/** All numbers ever sent; removing a quote does not free its number. */
export interface QuoteNumbers {
  /** The hash of the quote that had this number, if any had. */
  readonly usedBy: (quote: QuoteNumber) => string | undefined;
  readonly use: (quote: UsedNumber) => void;
  /** `Q-0007` `A` after `Q-0006`; with a number its next revision. */
  readonly next: (number?: string) => QuoteNumber;
}

export function openQuoteNumbers(db: Database.Database): QuoteNumbers {
  const hash = db.prepare('SELECT sha256 FROM quote_number WHERE number = ? AND revision = ?').pluck();
  const add = db.prepare('INSERT OR IGNORE INTO quote_number (number, revision, sha256) VALUES (?, ?, ?)');
  const sum = rowSummer(db, 'quote_number');
  const numbers = db.prepare('SELECT DISTINCT number FROM quote_number').pluck();
  const revisions = db.prepare('SELECT revision FROM quote_number WHERE number = ?').pluck();
  return {
    usedBy: ({ number, revision }) => Text.optional().parse(hash.get(number, revision)),
    use: ({ number, revision, sha256 }) => {
      if (isUnsent({ number })) return;
      add.run(number, revision, sha256);
      sum(`${number} ${revision}`);
    },
    next: (number) =>
      number === undefined
        ? { number: nextNumber(Text.array().parse(numbers.all())), revision: 'A' }
        : { number, revision: nextRevision(Text.array().parse(revisions.all(number))) },
  };
}

function nextNumber(used: readonly string[]): string {
  const serials = used.map((number) => Number(/^Q-(\d{1,12})$/.exec(number)?.[1] ?? 0));
  return `Q-${String(Math.max(0, ...serials) + 1).padStart(4, '0')}`;
}

/** A ... Z, AA, AB ... */
function nextRevision(used: readonly string[]): string {
  const places = used.filter((revision) => /^[A-Z]{1,8}$/.test(revision)).map(placeOf);
  return lettersOf(Math.max(0, ...places) + 1);
}

function placeOf(letters: string): number {
  return letters.split('').reduce((place, letter) => place * 26 + letter.charCodeAt(0) - 64, 0);
}

function lettersOf(place: number): string {
  if (place < 1) return '';
  return lettersOf(Math.floor((place - 1) / 26)) + String.fromCharCode(65 + ((place - 1) % 26));
}
