import { describe, expect, test } from 'vitest';
import { columnsOf } from '#electron/book/tables.ts';
import { fieldsOf } from '#shared-calc/fields/record-fields.ts';
import { importSuppliers } from '#shared-calc/papers/import-suppliers.ts';
import { importMaterials } from '#shared-calc/papers/import-materials.ts';
import { importTanks } from '#shared-calc/papers/import-tanks.ts';
import { allKinds, recordKinds } from '#shared-calc/records/records.ts';
import { demoRecords } from '#tests/renderer/demo-records.ts';

describe('the fields of a record', () => {
  test.each(allKinds)('a %s has one description a field, for its schema and its column in the file', (kind) => {
    const keys = fieldsOf(kind).map(([key]) => key);

    expect(Object.keys(recordKinds[kind].shape)).toEqual(keys);
    expect(columnsOf(kind).map(({ field }) => field)).toEqual(keys);
  });

  test.each(allKinds)('what a %s may lack is what its schema lets it lack', (kind) => {
    const lacking = fieldsOf(kind).map(([key, { mayBeEmpty }]) => [key, mayBeEmpty]);

    expect(fieldsOf(kind).map(([key, { schema }]) => [key, schema.safeParse(undefined).success])).toEqual(lacking);
  });

  test.each(allKinds)('every field of a %s has a heading of its own', (kind) => {
    const headings = fieldsOf(kind).map(([, { heading }]) => heading);

    expect(headings.filter((heading) => heading.trim() === '')).toEqual([]);
    expect(new Set(headings).size).toBe(headings.length);
  });

  test.each([
    ['tank', importTanks],
    ['material', importMaterials],
    ['supplier', importSuppliers],
  ] as const)('a list of %ss knows the headings of its fields and no other', (kind, take) => {
    const known = fieldsOf(kind).flatMap(([, field]) => field.list ?? []);
    const { refused } = take(list(known), demoRecords());
    const strange = take(list([...known, 'colour']), demoRecords()).refused;

    expect(refused.map(({ says }) => says).filter((says) => says.includes('says nothing here'))).toEqual([]);
    expect(strange.some(({ says }) => says.includes('"colour" says nothing here'))).toBe(true);
  });
});

/** A list of one row, which has its code and nothing else. */
function list(headings: readonly string[]): string {
  return `${headings.join(',')}\nX${','.repeat(headings.length - 1)}\n`;
}
