import type Database from 'better-sqlite3';
import type { Change } from '#shared-calc/records/change.ts';
import type { RecordKind } from '#shared-calc/records/records.ts';
import { rowSummer } from './checksums.ts';
import { toRow } from './row.ts';
import { columnsOf, sqlName } from './tables.ts';

interface Statements {
  readonly add: Database.Statement;
  readonly update: Database.Statement;
  readonly remove: Database.Statement;
  readonly sum: (id: string) => void;
}

/** Writes the rows of a change, with their checksums. Call it inside a transaction, after the change is checked against the file. */
export function changeWriter(db: Database.Database): (change: Change) => void {
  const prepared = new Map<RecordKind, Statements>();
  const of = (kind: RecordKind) => {
    const statements = prepared.get(kind) ?? prepare(db, kind);
    prepared.set(kind, statements);
    return statements;
  };
  return (change) => {
    const write = (kind: RecordKind, id: string, run: (statements: Statements) => Database.RunResult) => {
      const statements = of(kind);
      expectOne(run(statements));
      statements.sum(id);
    };
    for (const { kind, record } of change.removed) write(kind, record.id, ({ remove }) => remove.run(record.id));
    for (const { kind, to } of change.updated)
      write(kind, to.id, ({ update }) => update.run(...toRow(kind, to), to.id));
    for (const { kind, record } of change.added) write(kind, record.id, ({ add }) => add.run(...toRow(kind, record)));
  };
}

function prepare(db: Database.Database, kind: RecordKind): Statements {
  // Quoted: `order` is a word of SQL.
  const table = `"${sqlName(kind)}"`;
  const columns = columnsOf(kind).map(({ field }) => `"${sqlName(field)}"`);
  return {
    add: db.prepare(`INSERT INTO ${table} (${columns.join(', ')}) VALUES (${columns.map(() => '?').join(', ')})`),
    update: db.prepare(`UPDATE ${table} SET ${columns.map((column) => `${column} = ?`).join(', ')} WHERE id = ?`),
    remove: db.prepare(`DELETE FROM ${table} WHERE id = ?`),
    sum: rowSummer(db, sqlName(kind)),
  };
}

function expectOne({ changes }: Database.RunResult): void {
  if (changes !== 1) throw new Error(`one row expected, ${changes} written`);
}
