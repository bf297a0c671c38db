import { copyFileSync, readdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import Database from 'better-sqlite3';
import { describe, expect, test } from 'vitest';
import { newestVersion } from '#electron/book/migrate.ts';
import { migrations } from '#electron/book/migrations/all.ts';
import type { Migration } from '#electron/book/migrations/migration.ts';
import { openBook } from '#electron/book/open-book.ts';
import { freshSchema, readSchema } from '#electron/book/schema.ts';
import { verifyIssued } from '#electron/book/issued.ts';
import { readQuoteBody } from '#shared-calc/jobs/quote-body.ts';
import { quoteSizes } from '#shared-calc/papers/quote-sizes.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { bySortKey } from '#shared-calc/records/sort-key.ts';
import { demoRecords } from '#tests/demo-bench.ts';
import { faultOf, folderBytes, newBook, reopen, temporaryFolder, valueOf } from '#tests/electron/book/book-at-hand.ts';
import { adding, changingTank, oneOfEach, sortRecords, tankOf, today } from '#tests/electron/book/sample-records.ts';

const books = fileURLToPath(new URL('../../../fixtures/books/', import.meta.url));
const versions = readdirSync(books).filter((name) => name.endsWith('.loamwright'));

const next = migrations.length + 1;
const withShelves: Migration = {
  version: next,
  name: 'shelves',
  up: (db) => db.exec('CREATE TABLE shelf (id TEXT PRIMARY KEY NOT NULL) STRICT; UPDATE tank SET note = id;'),
};
const rebuilt: Migration = {
  version: next + 1,
  name: 'suppliers made anew',
  up: (db) => {
    const sql = db.prepare("SELECT sql FROM sqlite_schema WHERE name = 'supplier'").pluck().get() as string;
    db.exec(`CREATE TABLE old AS SELECT * FROM supplier; DROP TABLE supplier; ${sql};
             INSERT INTO supplier SELECT * FROM old; DROP TABLE old;`);
  },
};
const failing: Migration = {
  version: next + 1,
  name: 'one too many',
  up: (db) => db.exec('DELETE FROM local_value; INSERT INTO shelf VALUES (NULL)'),
};
const loosening: Migration = { version: next, name: 'loosening', up: (db) => db.exec('DELETE FROM supplier') };

function copyOf(name: string): string {
  const path = join(temporaryFolder(), 'Shop.loamwright');
  copyFileSync(join(books, name), path);
  return path;
}

function schemaOf(path: string): ReadonlyMap<string, string> {
  const db = new Database(path, { readonly: true });
  try {
    return readSchema(db);
  } finally {
    db.close();
  }
}

describe('books of earlier programs', () => {
  test('there is one of each version', () => {
    expect(versions.sort()).toEqual(migrations.map(({ version }) => `v${version}.loamwright`));
  });

  test.each(versions)('%s opens, is sound, and is made up as a new book is', (name) => {
    const path = copyOf(name);
    const book = reopen(path);

    expect(book.check()).toMatchObject({ ok: true, value: { sound: true, findings: [], version: migrations.length } });
    expect(book.records().tank.get('T07')).toMatchObject({ supplier: 'S1', insideLengthMm: 900 });
    book.close();
    expect(schemaOf(path)).toEqual(freshSchema(migrations, migrations.length));
  });
});

describe('the step to version 3', () => {
  test('lines of the demo workshop come to be read for what the program knew them by name', () => {
    const book = reopen(copyOf('demo/v2.loamwright'));
    const withUses = [...book.records().line.values()];
    const fresh = [...demoRecords().line.values()];
    const declared = ({ id, use, as, place, part, cures }: Line) => [id, { use, as, place, part, cures }] as const;

    expect(new Map(withUses.map(declared))).toEqual(new Map(fresh.map(declared)));
    expect(withUses.toSorted(bySortKey).map(({ id }) => id)).toEqual(fresh.toSorted(bySortKey).map(({ id }) => id));
    book.close();
  });

  test('a quote that was issued before is as issued, and its lines are read for the same', () => {
    const book = reopen(copyOf('demo/v2.loamwright'));
    const [quote] = book.records().issuedQuote.values();
    const body = readQuoteBody(quote?.body ?? '');

    expect(verifyIssued(book.records())).toEqual([{ id: quote?.id, holds: true }]);
    expect(body?.lines.find(({ use }) => use === 'filledMass')?.name).toBe('filled_mass');
    expect(body && quoteSizes(body).map(({ size, inside, kit }) => [size, inside, kit])).toEqual([
      ['T03', '445 × 445 × 445 mm', 'full'],
      ['T07', '900 × 445 × 600 mm', 'full'],
      ['T08', '1200 × 600 × 600 mm', 'full'],
    ]);
    book.close();
  });

  test('a line that was renamed, or made another kind, is read for nothing', () => {
    const path = copyOf('demo/v2.loamwright');
    const db = new Database(path);
    db.exec("UPDATE line SET name = 'quarantine_days' WHERE id = 'H1.plant_quarantine'");
    db.exec("UPDATE line SET unit = 'L' WHERE id = 'H1.settle_in'");
    db.close();
    const book = reopen(path);

    expect(['H1.plant_quarantine', 'H1.settle_in'].map((id) => book.records().line.get(id)?.use)).toEqual([
      undefined,
      undefined,
    ]);
    book.close();
  });
});

describe('migrate', () => {
  test('a book is brought forward step by step, with a backup of what it was', () => {
    const book = newBook(adding('begin', ...oneOfEach));
    const before = sortRecords(book.records());
    book.close();
    const opened = reopen(book.path, { backups: true, migrations: [...migrations, withShelves, rebuilt] });
    const backup = join(
      dirname(book.path),
      'Small workshop backups',
      `Small workshop ${today} version ${migrations.length}.loamwright`,
    );

    expect(opened.notes[0]).toEqual({ kind: 'backed-up', file: backup });
    expect(opened.notes[1]).toEqual({ kind: 'migrated', from: migrations.length, to: next + 1 });
    expect(opened.records().tank.get('T07')?.note).toBe('T07');
    expect(opened.check()).toMatchObject({ value: { sound: true, version: next + 1, revision: 3 } });
    expect(sortRecords(reopen(backup).records())).toEqual(before);
    opened.close();
    expect(schemaOf(book.path)).toEqual(freshSchema([...migrations, withShelves, rebuilt], next + 1));
  });

  test('edits made in the old form are not undone in the new one, later ones are', () => {
    const book = newBook(adding('begin', ...oneOfEach));
    const tank = book.records().tank.get('T07') ?? tankOf('T07');
    valueOf(book.apply(changingTank(tank, { note: 'old' }), 1));
    book.close();
    const opened = reopen(book.path, { migrations: [...migrations, withShelves] });
    valueOf(opened.apply(changingTank({ ...tank, note: 'T07' }, { note: 'new' }), 3));

    expect([valueOf(opened.undo()), valueOf(opened.undo())]).toEqual([{ revision: 5, label: 'change T07' }, 'nothing']);
  });

  test('a step that fails leaves the book at the step before it, with everything in it', () => {
    const book = newBook(adding('begin', ...oneOfEach));
    book.close();

    expect(faultOf(openBook(book.path, { today, migrations: [...migrations, withShelves, failing] }))).toEqual({
      kind: 'migration-failed',
      version: next + 1,
      name: 'one too many',
      says: expect.stringContaining('NOT NULL') as unknown,
    });
    const opened = reopen(book.path, { migrations: [...migrations, withShelves] });
    expect([opened.records().localValue.size, opened.check()]).toMatchObject([
      1,
      { value: { sound: true, version: next } },
    ]);
  });

  test('a step that would leave references loose is not taken', () => {
    const book = newBook(adding('begin', ...oneOfEach));
    book.close();

    expect(() => openBook(book.path, { today, backups: false, migrations: [...migrations, loosening] })).toThrow(
      'loosening leaves loose references',
    );
    expect(reopen(book.path).records().supplier.size).toBe(1);
  });

  test('no backup, no migration', () => {
    const book = newBook(adding('begin', ...oneOfEach));
    book.close();
    const inTheWay = join(dirname(book.path), 'Small workshop backups');
    copyFileSync(book.path, inTheWay);
    const before = folderBytes(dirname(book.path));

    expect(faultOf(openBook(book.path, { today, migrations: [...migrations, withShelves] }))).toMatchObject({
      kind: 'disk',
    });
    expect(folderBytes(dirname(book.path))).toEqual(before);
  });

  test('a newer book is refused by an older program', () => {
    const book = newBook();
    book.close();
    reopen(book.path, { migrations: [...migrations, withShelves] }).close();

    expect(faultOf(openBook(book.path, { today }))).toEqual({ kind: 'newer', found: next, newest: migrations.length });
  });
});

describe('newestVersion', () => {
  test('the steps are numbered from one on without a gap', () => {
    expect(newestVersion(migrations)).toBe(migrations.length);
    expect(() => newestVersion([...migrations, { ...withShelves, version: next + 1 }])).toThrow('shelves');
  });
});
