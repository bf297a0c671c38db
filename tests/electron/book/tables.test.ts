import Database from 'better-sqlite3';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { applyMigrations } from '#electron/book/migrate.ts';
import { migrations } from '#electron/book/migrations/all.ts';
import { readRecords } from '#electron/book/read-records.ts';
import { columnsOf, sqlName, type ColumnType } from '#electron/book/tables.ts';
import { changeWriter } from '#electron/book/write-change.ts';
import type { Added } from '#shared-calc/records/change.ts';
import { allKinds, recordKinds, type RecordKind } from '#shared-calc/records/records.ts';
import { once, referencesOf } from '#shared-calc/records/references.ts';
import { anyRecord } from '#tests/electron/book/any-record.ts';
import { valueOf } from '#tests/electron/book/book-at-hand.ts';
import { adding, listRecords } from '#tests/electron/book/sample-records.ts';

const sqlTypes: Readonly<Record<ColumnType, string>> = {
  text: 'TEXT',
  json: 'TEXT',
  integer: 'INTEGER',
  'yes no': 'INTEGER',
  real: 'REAL',
};

const emptyBook = () => {
  const db = new Database(':memory:');
  applyMigrations(db, migrations);
  return db;
};

/** A book that nothing is written into, shared by the tests that only ask for its schema. */
const schema = emptyBook();
const emptyFile = schema.serialize();

describe('tables', () => {
  test.each(allKinds)('a new book has the columns of a %s as they are declared', (kind) => {
    const columns = schema
      .prepare('SELECT name, type, "notnull" FROM pragma_table_info(?) ORDER BY cid')
      .raw()
      .all(sqlName(kind));

    expect(columns).toEqual(
      columnsOf(kind).map(({ field, type, mayBeEmpty }) => [sqlName(field), sqlTypes[type], mayBeEmpty ? 0 : 1]),
    );
  });

  test.each(allKinds)('what a %s means by one kind of record is a foreign key', (kind) => {
    const keys = schema.prepare('SELECT "from", "table" FROM pragma_foreign_key_list(?)').raw().all(sqlName(kind));
    const single = referencesOf(kind).flatMap(({ field, kinds }) =>
      kinds.length === 1 && kinds[0] ? [[sqlName(field), sqlName(kinds[0])]] : [],
    );

    expect(new Map(keys as [string, string][])).toEqual(new Map(single as [string, string][]));
  });

  test.each(allKinds)(
    'whole numbers of a %s are kept as whole numbers, and what may be left out may be empty',
    (kind) => {
      const { properties, required } = z.toJSONSchema(recordKinds[kind]) as {
        readonly properties: Readonly<Record<string, { readonly type?: string }>>;
        readonly required: readonly string[];
      };

      expect(
        columnsOf(kind)
          .filter(({ type }) => type === 'integer')
          .map(({ field }) => field),
      ).toEqual(Object.keys(properties).filter((field) => properties[field]?.type === 'integer'));
      expect(
        columnsOf(kind)
          .filter(({ mayBeEmpty }) => !mayBeEmpty)
          .map(({ field }) => field),
      ).toEqual(required);
    },
  );

  test.each(allKinds)('any %s comes back from the file as it went in', (kind) => {
    const db = new Database(emptyFile);
    db.pragma('foreign_keys = OFF');
    const write = changeWriter(db);

    fc.assert(
      fc.property(recordsOf(kind), (added) => {
        db.exec(`DELETE FROM "${sqlName(kind)}"`);
        write(adding('try', ...added));

        expect(listRecords(valueOf(readRecords(db)).records)).toEqual(
          added.length === 0 ? {} : { [kind]: added.map(({ record }) => record) },
        );
      }),
      { numRuns: 60 },
    );
  });
});

function recordsOf(kind: RecordKind): fc.Arbitrary<readonly Added[]> {
  const together = (once[kind] ?? []).flat();
  const key = (record: Readonly<Record<string, unknown>>) => JSON.stringify(together.map((field) => record[field]));
  return fc
    .uniqueArray(anyRecord(kind), { selector: ({ id }) => id, maxLength: 4 })
    .filter((records) => together.length === 0 || new Set(records.map(key)).size === records.length)
    .map((records) => records.map((record) => ({ kind, record }) as Added));
}
