import Database from 'better-sqlite3';
import { describe, expect, test } from 'vitest';
import type { Book } from '#electron/book/book.ts';
import { hashBody } from '#electron/book/issued.ts';
import { migrations } from '#electron/book/migrations/all.ts';
import type { Migration } from '#electron/book/migrations/migration.ts';
import { changedQuote } from '#shared-calc/jobs/changed-quote.ts';
import { freezeQuote } from '#shared-calc/jobs/freeze-quote.ts';
import { issueQuote, quoteNumberOf } from '#shared-calc/jobs/issue-quote.ts';
import { keysOf } from '#shared-calc/jobs/job-sheet.ts';
import { workedJob } from '#tests/worked-job.ts';
import { readQuoteBody, type QuoteBody } from '#shared-calc/jobs/quote-body.ts';
import { partsOf, reworkQuote } from '#shared-calc/jobs/rework-quote.ts';
import { orderSums } from '#shared-calc/bench/order-sums.ts';
import { quoteModel } from '#shared-calc/papers/quote-model.ts';
import type { Added } from '#shared-calc/records/change.ts';
import { diffRecords } from '#shared-calc/records/diff-records.ts';
import { allKinds, type Records } from '#shared-calc/records/records.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';
import { newBook, reopen, valueOf } from '#tests/electron/book/book-at-hand.ts';
import { jobOf, libraryJob, withRecords, written } from '#tests/shared-calc/jobs/demo-jobs.ts';

const QUOTE = 'Q-0001A';

/** A real book in which T05, Full, flat has been issued as Q-0001 A: 1,601.41 with tax. */
function issuedBook(): Book {
  const begin = libraryJob();
  const book = newBook(diffRecords('begin', emptied(begin), begin));
  issueNext(book);
  return book;
}

function issueNext(book: Book): void {
  const records = book.records();
  const open = workedJob(records, jobOf(records, 'J02'), DEMO_DAY);
  const sums = valueOf(orderSums(open.bench, keysOf(open.sheet), open.pricing));
  const named = book.nextQuote(quoteNumberOf(records, 'J02'));
  const body = freezeQuote(records, open, sums, { ...named, issuedOn: DEMO_DAY });
  valueOf(book.apply(issueQuote(records, body, hashBody), book.revision()));
}

const nextVersion: Migration = {
  version: migrations.length + 1,
  name: 'a later form',
  up: (db) => db.exec('CREATE TABLE shelf (id TEXT PRIMARY KEY NOT NULL) STRICT; UPDATE tank SET note = id;'),
};

/** What happens after the issue; each goes into the book as an edit. */
const events: Readonly<Record<string, (records: Records) => Records>> = {
  'the recipe is edited': (records) =>
    withRecords(
      records,
      'line',
      [...records.line.values()].map((line) => (line.name === 'drainage_waste' ? { ...line, text: '40 %' } : line)),
    ),
  'a line of the recipe is taken out': (records) => without(records, 'line', (line) => line.id === 'H1.capping_need'),
  'every price is raised': (records) =>
    withRecords(
      records,
      'packPrice',
      [...records.packPrice.values()].map((price) => ({ ...price, priceCoins: price.priceCoins * 2 })),
    ),
  'a material is deleted with its packs and prices': (records) => {
    const packs = new Set([...records.pack.values()].filter((pack) => pack.material === 'M15').map(({ id }) => id));
    const unpriced = without(records, 'packPrice', (price) => packs.has(price.pack));
    const unpacked = without(unpriced, 'pack', (pack) => packs.has(pack.id));
    const unstocked = without(unpacked, 'move', ({ of }) => of === 'M15');
    return without(unstocked, 'material', (material) => material.id === 'M15');
  },
  'the tank is measured anew': (records) =>
    withRecords(
      records,
      'tank',
      [...records.tank.values()].map((tank) => ({ ...tank, insideLengthMm: 700, damHeightMm: 120 })),
    ),
  'margins, taxes and rates change': (records) => {
    const margins = [...records.margin.values()].map((margin) => ({ ...margin, share: 0.6 }));
    const taxes = [...records.taxClass.values()].map((tax) => ({ ...tax, share: 0.2 }));
    const rates = [...records.rate.values()].map((rate) => ({ ...rate, coins: (rate.coins ?? 0) + 500 }));
    return withRecords(withRecords(withRecords(records, 'margin', margins), 'taxClass', taxes), 'rate', rates);
  },
  'the workshop is named and counts otherwise': (records) =>
    withRecords(
      records,
      'workshop',
      [...records.workshop.values()].map((shop) => ({
        ...shop,
        name: 'Another',
        currency: 'EUR',
        discountShare: 0.1,
        plantsFullDays: 5,
      })),
    ),
  'the client changes their mind': (records) => written(records, 'client', { litter: '60 mm', kit: 'show' }),
};

describe('an issued quote, whatever happens afterwards', () => {
  test('it says 1,601.41, and its hash is that of its bytes', () => {
    const book = issuedBook();
    const { body, sha256 } = quoteIn(book);
    expect([quoteModel(bodyOf(book)).gross, sha256]).toEqual(['1601.41', hashBody(body)]);
  });

  test.each(Object.keys(events))('%s: same bytes, same total, worked again from its own body', (event) => {
    const book = issuedBook();
    const asIssued = quoteIn(book);
    const printed = quoteModel(bodyOf(book));
    const later = events[event]?.(book.records()) ?? book.records();
    valueOf(book.apply(diffRecords(event, book.records(), later), book.revision()));
    book.close();
    const again = reopen(book.path);
    expect(again.notes).toEqual([]);
    expect([quoteIn(again), quoteModel(bodyOf(again))]).toEqual([asIssued, printed]);
    expect(valueOf(reworkQuote(partsOf(bodyOf(again)))).grossCoins).toBe(160_141);
  });

  test("the program's version is raised: the book takes a new form, the quote stays as it is", () => {
    const book = issuedBook();
    const asIssued = quoteIn(book);
    book.close();
    const newer = reopen(book.path, { migrations: [...migrations, nextVersion] });
    expect(newer.notes).toEqual([{ kind: 'migrated', from: migrations.length, to: migrations.length + 1 }]);
    expect([quoteIn(newer), quoteModel(bodyOf(newer)).gross]).toEqual([asIssued, '1601.41']);
  });

  test('much of it at once, and a revision: what changed adds up to the difference, the first stays', () => {
    const book = issuedBook();
    const asIssued = quoteIn(book);
    for (const [event, happen] of Object.entries(events)) {
      // Without a material the next quote is not worked, and another currency is another sum.
      if (/deleted|counts otherwise/.test(event)) continue;
      valueOf(book.apply(diffRecords(event, book.records(), happen(book.records())), book.revision()));
    }
    issueNext(book);
    const revised = bodyOf(book, 'Q-0001B');
    const changed = valueOf(changedQuote(bodyOf(book), revised));
    expect(changed.sum).toBe(revised.sums.netCoins - bodyOf(book).sums.netCoins);
    expect(changed.lines.reduce((sum, { from, to }) => sum + to - from, 0)).toBe(changed.sum);
    expect(quoteIn(book)).toEqual(asIssued);
  });

  test('one that was tampered with in the file is named on opening', () => {
    const book = issuedBook();
    book.close();
    const db = new Database(book.path);
    const trigger = triggerOf(db);
    db.exec('DROP TRIGGER issued_quote_stays');
    db.exec(`UPDATE issued_quote SET body = replace(body, '"grossCoins":160141', '"grossCoins":60141')`);
    // It is put back, so that nothing but the quote itself tells.
    db.exec(trigger);
    db.close();
    const again = reopen(book.path);
    expect(again.notes).toEqual([{ kind: 'issued-altered', quotes: [QUOTE] }]);
    const checked = again.check();
    expect(checked.ok && checked.value.findings).toContainEqual({
      kind: 'issued-altered',
      id: QUOTE,
      number: 'Q-0001',
      revision: 'A',
    });
  });
});

function triggerOf(db: Database.Database): string {
  return String(db.prepare("SELECT sql FROM sqlite_schema WHERE name = 'issued_quote_stays'").pluck().get());
}

function quoteIn(book: Book, id = QUOTE) {
  const quote = book.records().issuedQuote.get(id);
  if (!quote) throw new Error(`no ${id}`);
  return quote;
}

function bodyOf(book: Book, id = QUOTE): QuoteBody {
  const body = readQuoteBody(quoteIn(book, id).body);
  if (!body) throw new Error(`${id} cannot be read`);
  return body;
}

type RecordIn<K extends keyof Records> = Records[K] extends ReadonlyMap<string, infer R> ? R : never;

function without<K extends Added['kind']>(records: Records, kind: K, gone: (record: RecordIn<K>) => boolean): Records {
  const kept = [...(records[kind] as ReadonlyMap<string, RecordIn<K>>)].filter(([, record]) => !gone(record));
  return { ...records, [kind]: new Map(kept) };
}

function emptied(records: Records): Records {
  const none = Object.fromEntries(allKinds.map((kind) => [kind, new Map()]));
  return { ...records, ...none };
}
