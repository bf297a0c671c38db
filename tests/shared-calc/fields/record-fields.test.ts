import { describe, expect, test } from 'vitest';
import { columnsOf } from '#electron/book/tables.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import { unitBeside } from '#renderer/books/record-columns.ts';
import { animalTable } from '#renderer/places/animal-book/animal-book-place.tsx';
import { cultureTable } from '#renderer/places/culture-book/culture-book-place.tsx';
import { materialTable } from '#renderer/places/material-book/material-rows.ts';
import { plantTable } from '#renderer/places/plant-book/plant-book-place.tsx';
import {
  closedTable,
  marginTable,
  rateTable,
  supplierTable,
  taxTable,
} from '#renderer/places/rate-book/rate-tables.ts';
import { tankTable } from '#renderer/places/tank-book/tank-rows.ts';
import { fieldOf, fieldsOf } from '#shared-calc/fields/record-fields.ts';
import { importRecords } from '#shared-calc/acts/import-records.ts';
import { sayRowFault } from '#shared-calc/words/say-row-fault.ts';
import { allKinds, recordKinds, type RecordKind } from '#shared-calc/records/records.ts';
import { demoDay, demoRecords } from '#tests/renderer/demo-records.ts';

const context = derive(demoRecords(), demoDay);

const books = [
  ['tank', tankTable],
  ['material', materialTable],
  ['plant', plantTable],
  ['cultureKind', cultureTable],
  ['animalKind', animalTable],
  ['rate', rateTable],
  ['margin', marginTable],
  ['taxClass', taxTable],
  ['supplier', supplierTable],
  ['closedDay', closedTable],
] as const;

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

  test.each(['tank', 'material', 'supplier', 'animalKind'] as const)(
    'a list of %ss knows the headings of its fields and no other',
    (kind) => {
      const known = fieldsOf(kind).flatMap(([, field]) => field.list ?? []);
      const says = (headings: readonly string[]) =>
        importRecords(kind, list(headings), demoRecords()).refused.map(({ fault }) => sayRowFault(fault));

      expect(says(known).filter((sentence) => sentence.includes('says nothing here'))).toEqual([]);
      expect(says([...known, 'colour']).some((sentence) => sentence.includes('"colour" says nothing here'))).toBe(true);
    },
  );

  test.each(books)(
    'the %s book has a column for each field of its records that is typed, under its heading',
    (kind, table) => {
      const columns = table.columns(context).map(({ key, title }) => [key, title]);
      const described = typedFields(kind).map(([key, { heading }]) => [key, heading]);

      expect(columns.filter(([key = '']) => fieldOf(kind, key))).toEqual(described);
    },
  );

  test.each(books)('a figure of the %s book stands under the unit that it is typed in', (kind, table) => {
    const units = table.columns(context).flatMap(({ key, unit }) => (fieldOf(kind, key) ? [[key, unit]] : []));
    const typed = typedFields(kind).map(([key, field]) => [key, unitBeside(field, context.display)]);

    expect(units).toEqual(typed);
  });
});

function typedFields(kind: RecordKind) {
  return fieldsOf(kind).filter(([, field]) => field.kind !== 'data');
}

/** A list of one row that has only its code. */
function list(headings: readonly string[]): string {
  return `${headings.join(',')}\nX${','.repeat(headings.length - 1)}\n`;
}
