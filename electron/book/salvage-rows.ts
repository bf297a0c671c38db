import { copyFileSync, existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { sumOf } from './checksums.ts';
import { isDatabaseError } from './storage-fault.ts';
import { type RawCell, rawFile, type RawFile, type RawRow } from './raw-file.ts';

/** What the tables of a damaged file still give. */
export interface SalvagedRows {
  /** The form of the book, if its header still says it. */
  readonly version: number;
  readonly rows: ReadonlyMap<string, readonly RawRow[]>;
  /** Whether all checksums can be read: then no row was there that none was written for. */
  readonly knowsAll: boolean;
  /** Checksums by table and key. */
  readonly known: ReadonlyMap<string, ReadonlyMap<string, number>>;
}

/** The columns of each table, in the form of the file. */
export type TableColumns = (version: number) => ReadonlyMap<string, number>;

/** Reads a damaged file page by page. The file itself, and the log beside it, are only copied. */
export function salvageRows(path: string, columnsIn: TableColumns): SalvagedRows {
  const bytes = readWithLog(path);
  const file = rawFile(bytes);
  const roots = rootsOf(file);
  const version = bytes.length >= 100 ? bytes.readUInt32BE(60) : 0;
  const columns = columnsIn(version);
  const known = knownSums(file, columns);
  const rows = new Map<string, RawRow[]>();
  const seen = new Set<number>();
  for (const [table, count] of columns) {
    const root = roots.get(table);
    const leaves = root === undefined ? [] : file.leaves(root);
    for (const page of leaves) seen.add(page);
    const found = leaves.flatMap((page) => file.rows(page)).flatMap((row) => widen(row, count));
    rows.set(table, found);
  }
  const cut = file.allLeaves('table').filter((page) => !seen.has(page));
  for (const row of cut.flatMap((page) => file.rows(page))) {
    const table = tableBySum(row, known, columns);
    if (table !== undefined) rows.get(table.name)?.push(table.row);
  }
  const sums = roots.get('checksum');
  return { version, rows, known, knowsAll: sums !== undefined && file.isWhole(sums) };
}

/** The file as it is with its log, if that can still be taken into it; else as it is. */
function readWithLog(path: string): Buffer {
  if (!existsSync(`${path}-wal`)) return readFileSync(path);
  const folder = mkdtempSync(join(tmpdir(), 'loamwright-'));
  try {
    const copy = join(folder, 'book');
    copyFileSync(path, copy);
    copyFileSync(`${path}-wal`, `${copy}-wal`);
    takeLogInto(copy);
    return readFileSync(copy);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function takeLogInto(copy: string): void {
  const db = new Database(copy);
  try {
    db.pragma('wal_checkpoint(TRUNCATE)');
  } catch (error) {
    // A log that does not fit any more stays out; the file's own pages are read all the same.
    if (!isDatabaseError(error)) throw error;
  } finally {
    db.close();
  }
}

/** The first page of each table, by name. */
function rootsOf(file: RawFile): ReadonlyMap<string, number> {
  const schema = file.leaves(1).flatMap((page) => file.rows(page));
  return new Map(
    schema.flatMap(([type, name, , root]) =>
      type === 'table' && typeof name === 'string' && typeof root === 'number' ? [[name, root]] : [],
    ),
  );
}

/** The checksums, which name their table, so that they are found on any page. */
function knownSums(file: RawFile, tables: ReadonlyMap<string, number>): SalvagedRows['known'] {
  const known = new Map<string, Map<string, number>>();
  for (const row of file.allLeaves('index').flatMap((page) => file.rows(page))) {
    const [table, key, crc] = row;
    if (row.length !== 3 || typeof table !== 'string' || typeof key !== 'string' || typeof crc !== 'number') continue;
    if (!tables.has(table)) continue;
    const of = known.get(table) ?? new Map<string, number>();
    known.set(table, of.set(key, crc));
  }
  return known;
}

/** Rows from before a column was added are shorter. */
function widen(row: RawRow, count: number): readonly RawRow[] {
  if (row.length > count) return [];
  return [[...row, ...Array.from<RawCell>({ length: count - row.length }).fill(null)]];
}

/** The table that a row of a page cut off from its table belongs to, if its checksum proves it. */
function tableBySum(
  row: RawRow,
  known: SalvagedRows['known'],
  columns: ReadonlyMap<string, number>,
): { readonly name: string; readonly row: RawRow } | undefined {
  const [id] = row;
  if (typeof id !== 'string') return undefined;
  for (const [name, count] of columns) {
    const sum = known.get(name)?.get(id);
    const [wide] = sum === undefined ? [] : widen(row, count);
    if (wide && sum === sumOf(wide)) return { name, row: wide };
  }
  return undefined;
}
