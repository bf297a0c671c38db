import { copyFileSync, readdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import Database from 'better-sqlite3';
import { describe, expect, test } from 'vitest';
import { newestVersion } from '#electron/book/migrate.ts';
import { migrations } from '#electron/book/migrations/all.ts';
import type { Migration } from '#electron/book/migrations/migration.ts';
import type { Book } from '#electron/book/book.ts';
import { newestSchema } from '#electron/book/newest-schema.ts';
import { openBook } from '#electron/book/open-book.ts';
import { digestOf, freshSchema, readSchema } from '#electron/book/schema.ts';
import { sayOpeningNotes } from '#electron/service/say-opening-note.ts';
import { verifyIssued } from '#electron/book/issued.ts';
import { readQuoteBody } from '#shared-calc/jobs/quote-body.ts';
import { quoteSizes } from '#shared-calc/papers/quote-sizes.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { bySortKey } from '#shared-calc/records/sort-key.ts';
import { demoOnce, demoRecords } from '#tests/demo-bench.ts';
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

/** Ids by recipe, in the order of its list. */
function inOrder(lines: readonly Line[]): ReadonlyMap<string, readonly string[]> {
  const byRecipe = Map.groupBy(lines.toSorted(bySortKey), ({ recipe }) => recipe);
  return new Map([...byRecipe].map(([recipe, own]) => [recipe, own.map(({ id }) => id)]));
}

describe('books of earlier programs', () => {
  test('there is one of each version', () => {
    expect(versions.toSorted()).toEqual(migrations.map(({ version }) => `v${version}.loamwright`).toSorted());
  });

  test('a new book has the schema by which books of the newest version are known', () => {
    expect(digestOf(freshSchema(migrations, migrations.length))).toBe(newestSchema);
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
    expect(inOrder(withUses)).toEqual(inOrder(fresh));
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

describe('the step to version 7', () => {
  const edited = 'demo/v3.loamwright';
  const linesOf = (book: Book, recipe: string) =>
    [...book.records().line.values()].filter((line) => line.recipe === recipe).toSorted(bySortKey);
  const said = (line: Line) => ({ ...line, order: '' });

  test.each(['H2', 'H3', 'H4'])('%s, which nobody changed, is as in a new book, line by line', (recipe) => {
    const book = reopen(copyOf(edited));
    const fresh = [...demoRecords().line.values()].filter((line) => line.recipe === recipe);

    expect(linesOf(book, recipe).map(said)).toEqual(fresh.toSorted(bySortKey).map(said));
    book.close();
  });

  test('a house that was edited keeps its own figures and rules, without a range, and gets the rest', () => {
    const book = reopen(copyOf(edited));
    const line = (id: string) => book.records().line.get(`H1.${id}`);

    expect(
      ['mix_settle', 'tank_humidity', 'wetting'].map((id) => [line(id)?.role, line(id)?.text, line(id)?.least]),
    ).toEqual([
      ['given', '15 %', undefined],
      ['given', '85 %', undefined],
      ['worked', 'wetting_water(soil_placed, moisture_start, moisture_target) * 1.1', undefined],
    ]);
    expect([line('leaves_close'), line('soil_stays')?.level]).toEqual([undefined, 'advice']);
    expect(new Map([...book.records().localValue.values()].map((local) => [local.line, local.text]))).toEqual(
      new Map([
        ['changes_an_hour', '2 each/h'],
        ['room_summer', '25 degC'],
        ['tank_humidity', '80 %'],
      ]),
    );
    book.close();
  });

  test('its own names are read: a line it renamed, and one of its own that is called as a new one is', () => {
    const book = reopen(copyOf(edited));
    const rules = new Map(linesOf(book, 'H1').map(({ name, text }) => [name, text]));

    expect([rules.get('air_flow'), rules.get('changes_an_hour')]).toEqual(['120 mm', 'air_flow_2 / air_volume']);
    expect(rules.get('vapour_summer')).toContain('changes_an_hour');
    expect(rules.get('not_too_open')).toBe('air_flow_2 <= evaporating');
    book.close();
  });

  test('every figure of its jobs is worked, and a copy of a recipe works as what it was copied from', () => {
    const book = reopen(copyOf(edited));
    const open = ['H1', 'H5'].map((recipe) => {
      const bench = demoOnce({ recipe, sizes: ['T07'] }, book.records());
      const unknown = bench.input().lines.filter(({ name }) => bench.box('T07', name).value === undefined);
      return [unknown.map(({ name }) => name), bench.box('T07', 'not_too_dry').check?.state];
    });

    expect(open).toEqual([
      [[], 'holds'],
      [[], 'holds'],
    ]);
    expect(verifyIssued(book.records()).map(({ holds }) => holds)).toEqual([true]);
    book.close();
  });

  test('what differs and what moved is told when it is opened', () => {
    const book = reopen(copyOf(edited));
    const [, house] = sayOpeningNotes(book.notes, book.path).filter((says) => says.startsWith('H1'));
    const kept = book.notes.flatMap((note) => (note.kind === 'recipe-worked' ? note.kept : []));

    expect(house).toContain('Hottest day in the tank');
    expect(kept.map(({ label, has, house: inNew }) => [label, has, inNew.slice(0, 16)])).toEqual([
      ['Settling of the mix', '15 %', '12 % (8 to 18)'],
      ['Wetting water', 'wetting_water(soil_placed, moisture_start, moisture_target) * 1.1', 'max(0 L, soil_pl'],
      ['Humidity in the tank', '85 %', 'steady_humidity('],
    ]);
    book.close();
  });

  test('a line that would read one the house has taken out is left out, and that is told', () => {
    const path = copyOf(edited);
    const db = new Database(path);
    db.exec("DELETE FROM line WHERE id = 'H2.leaf_layers'");
    db.close();
    const book = reopen(path);
    const note = book.notes.find((each) => each.kind === 'recipe-worked' && each.recipe === 'H2');

    expect(note).toMatchObject({ left: ['Litter lasts', 'Cover after a year'] });
    expect(book.records().line.has('H2.litter_days')).toBe(false);
    book.close();
  });

  test('a recipe of its own is left alone', () => {
    const book = reopen(copyOf('v3.loamwright'));

    expect(book.notes.filter(({ kind }) => kind === 'recipe-worked')).toEqual([]);
    book.close();
  });
});

describe('the step to version 12', () => {
  test('a caution that the house has worded itself stays; the others are said by the table', () => {
    const path = copyOf('demo/v3.loamwright');
    const db = new Database(path);
    db.exec("UPDATE line SET caution = 'Ask Jo.' WHERE id = 'H2.hottest_day'");
    db.close();
    const book = reopen(path);
    const worded = [...book.records().line.values()].filter((line) => line.caution !== undefined);

    expect(worded.map(({ id, caution }) => [id, caution])).toEqual([['H2.hottest_day', 'Ask Jo.']]);
    book.close();
  });
});

describe('the step to version 15', () => {
  test.each([
    ['accepted', 'Q1'],
    ['handed over', 'Q1'],
    ['quoted', undefined],
  ])('a job that is %s is sold as %s', (state, quote) => {
    const path = copyOf('v13.loamwright');
    const db = new Database(path);
    db.prepare("UPDATE job SET state = ? WHERE id = 'J01'").run(state);
    db.close();
    const book = reopen(path);

    expect(book.records().job.get('J01')?.soldAs).toBe(quote);
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
