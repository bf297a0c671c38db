import { crc32 } from 'node:zlib';
import type Database from 'better-sqlite3';
import { z } from 'zod';

/** A row that is not as it was last written, or that was lost or added past the program. */
export interface AlteredRow {
  readonly table: string;
  /** The id of a record, the revision of an edit, number and revision of a quote. */
  readonly key: string;
}

const Keys = z.array(z.string());
const Tables = z.array(z.string());
const SummedRow = z.tuple([z.string(), z.int().nullable()], z.unknown());

/** The CRC-32 of a row's cells as they are read from the file. It finds what a disk alters, not what a forger does. */
export function sumOf(cells: readonly unknown[]): number {
  return crc32(JSON.stringify(cells));
}

/** The key of a table's rows, as SQL. */
function keyOf(table: string): string {
  if (table === 'journal') return 'CAST("revision" AS TEXT)';
  return table === 'quote_number' ? `"number" || ' ' || "revision"` : '"id"';
}

/** Sums a row as it now stands in the file, or drops the sum of one that is gone. Call it in the transaction of the write. */
export function rowSummer(db: Database.Database, table: string): (key: string) => void {
  const read = db.prepare<[string], readonly unknown[]>(`SELECT * FROM "${table}" WHERE ${whereKey(table)}`).raw();
  const put = db.prepare('INSERT OR REPLACE INTO checksum VALUES (?, ?, ?)');
  const drop = db.prepare('DELETE FROM checksum WHERE "table" = ? AND "key" = ?');
  return (key) => {
    const row = read.get(key);
    if (row) put.run(table, key, sumOf(row));
    else drop.run(table, key);
  };
}

/** As `keyOf`, in a form that finds the row by its index. */
function whereKey(table: string): string {
  if (table === 'journal') return '"revision" = CAST(? AS INTEGER)';
  return `${keyOf(table)} = ?`;
}

/** Sums all rows as they stand. Does nothing in a book of a form without sums. */
export function sumAll(db: Database.Database): void {
  if (!hasSums(db)) return;
  const put = db.prepare('INSERT INTO checksum VALUES (?, ?, ?)');
  db.exec('DELETE FROM checksum');
  for (const table of summedTables(db)) {
    const rows = db.prepare<[], readonly unknown[]>(`SELECT ${keyOf(table)}, * FROM "${table}"`).raw();
    for (const [key, ...cells] of rows.all()) put.run(table, key, sumOf(cells));
  }
}

function hasSums(db: Database.Database): boolean {
  return db.prepare("SELECT 1 FROM sqlite_schema WHERE type = 'table' AND name = 'checksum'").get() !== undefined;
}

function summedTables(db: Database.Database): readonly string[] {
  const all = db.prepare("SELECT name FROM sqlite_schema WHERE type = 'table' AND name <> 'checksum'").pluck().all();
  return Tables.parse(all).filter((name) => !name.startsWith('sqlite_'));
}

/** Every altered row of the file; none in a book of a form without sums. */
export function findAltered(db: Database.Database): readonly AlteredRow[] {
  return hasSums(db) ? summedTables(db).flatMap((table) => findAlteredIn(db, table)) : [];
}

/** The altered rows of one table. */
function findAlteredIn(db: Database.Database, table: string): readonly AlteredRow[] {
  const altered = alteredAmong(db.prepare(selectSummed(table, '*')).raw().iterate());
  return [...altered, ...findLost(db, table, altered)].map((key) => ({ table, key }));
}

/**
 * The altered edits of the journal and the altered quote numbers, which opening a book does not read. Works in slices,
 * so that what is asked meanwhile is answered between them.
 */
export function* findAlteredHistory(db: Database.Database): Generator<undefined, readonly AlteredRow[]> {
  const slice = db
    .prepare<[number], unknown>(`${selectSummed('journal', '*', 'WHERE "revision" > ?')} LIMIT 200`)
    .raw();
  const altered: string[] = [];
  for (let last = 0; ;) {
    const rows = slice.all(last);
    altered.push(...alteredAmong(rows));
    const next = rows.at(-1);
    if (next === undefined) break;
    last = Number(SummedRow.parse(next)[0]);
    yield undefined;
  }
  const lost = findLost(db, 'journal', altered);
  return [...[...altered, ...lost].map((key) => ({ table: 'journal', key })), ...findAlteredIn(db, 'quote_number')];
}

function alteredAmong(rows: Iterable<unknown>): string[] {
  const altered: string[] = [];
  for (const row of rows) {
    const [key, sum, ...cells] = SummedRow.parse(row);
    if (sum !== sumOf(cells)) altered.push(key);
  }
  return altered;
}

/** Rows with key and sum before their cells, in the order in which they were added. */
export function selectSummed(table: string, columns: string, where = ''): string {
  const sum = `SELECT crc FROM checksum WHERE checksum."table" = '${table}' AND checksum."key" = ${keyIn(table)}`;
  return `SELECT ${keyIn(table)}, (${sum}), ${columns} FROM "${table}" ${where} ORDER BY rowid`;
}

/** As `keyOf`, where `checksum` is at hand too. */
function keyIn(table: string): string {
  return keyOf(table).replaceAll(/"\w+"/g, (column) => `"${table}".${column}`);
}

/** Keys of sums whose rows are gone; `altered` are those of the table's rows whose sums do not hold. */
export function findLost(db: Database.Database, table: string, altered: readonly string[]): readonly string[] {
  const count = (sql: string) => z.int().parse(db.prepare(sql).pluck().get());
  const rows = count(`SELECT count(*) FROM "${table}"`);
  const sums = count(`SELECT count(*) FROM checksum WHERE "table" = '${table}'`);
  if (altered.length === 0 && sums === rows) return [];
  const lost = `SELECT "key" FROM checksum WHERE "table" = '${table}' AND "key" NOT IN (SELECT ${keyOf(table)} FROM "${table}")`;
  return Keys.parse(db.prepare(lost).pluck().all());
}
