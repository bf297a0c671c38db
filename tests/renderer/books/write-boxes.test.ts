import { isDeepStrictEqual } from 'node:util';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { derive } from '#shared-calc/derive/derived.ts';
import type { BookRow, BookTable } from '#renderer/books/book-table.ts';
import { sayRefused, writeBoxes, type BoxText, type RefusedBox } from '#renderer/books/write-boxes.ts';
import { plantTable } from '#renderer/places/plant-book/plant-book-place.tsx';
import { materialTable } from '#renderer/places/material-book/material-rows.ts';
import { closedTable, supplierTable } from '#renderer/places/rate-book/rate-tables.ts';
import { tankTable } from '#renderer/places/tank-book/tank-rows.ts';
import { applyChange, emptyChange } from '#shared-calc/records/change.ts';
import { failed, ok } from '#shared-calc/result.ts';
import { demoDay, demoRecords } from '#tests/renderer/demo-records.ts';

const records = demoRecords();
const context = derive(records, demoDay);
const t07 = records.tank.get('T07');

describe('writeBoxes', () => {
  test('one field is one labelled change', () => {
    expect(writeBoxes(tankTable, context, [{ row: 'T07', column: 'damHeightMm', text: '140' }])).toEqual(
      ok({ ...emptyChange('dam of T07'), updated: [{ kind: 'tank', from: t07, to: { ...t07, damHeightMm: 140 } }] }),
    );
  });

  test('two fields of one record are one update', () => {
    const texts = [
      { row: 'T07', column: 'damHeightMm', text: '140' },
      { row: 'T07', column: 'label', text: ' Low \n dam ' },
    ];
    expect(writeBoxes(tankTable, context, texts)).toEqual(
      ok({
        ...emptyChange('2 fields'),
        updated: [{ kind: 'tank', from: t07, to: { ...t07, damHeightMm: 140, label: 'Low dam' } }],
      }),
    );
  });

  test('fields that only go together when both are in are put in one after the other', () => {
    const texts = [
      { row: 'P01', column: 'lightHigh', text: '9' },
      { row: 'P01', column: 'lightLow', text: '7' },
    ];
    expect(writeBoxes(plantTable, context, texts).ok).toBe(true);
  });

  test('the same again is no change', () => {
    expect(writeBoxes(tankTable, context, [{ row: 'T07', column: 'damHeightMm', text: '150 mm' }])).toEqual(
      ok(emptyChange('')),
    );
  });

  test('where any is refused all are, each named', () => {
    const refused = [
      { row: 'T07', column: 'Dam', says: 'The dam is 700 mm and the tank only 600 mm high inside.' },
      { row: 'T11', column: 'Bow', says: 'A hexagon has no front bow.' },
      {
        row: 'T07',
        column: 'Code',
        says: 'A code stays as it is, for others go by it. Copy the row to have it under another code.',
      },
    ];
    const done = writeBoxes(tankTable, context, [
      { row: 'T07', column: 'damHeightMm', text: '700' },
      { row: 'T07', column: 'glassMm', text: '8' },
      { row: 'T11', column: 'frontBowMm', text: '8' },
      { row: 'T07', column: 'id', text: 'T70' },
    ]);
    expect([done, sayRefused(refused)]).toEqual([
      failed(refused),
      'Nothing was written. T07: The dam is 700 mm and the tank only 600 mm high inside. Refused too: bow of T11, code of T07.',
    ]);
  });

  test('another shape sets what it has not to nothing', () => {
    const done = writeBoxes(tankTable, context, [{ row: 'T09', column: 'shape', text: 'hexagon' }]);
    const t09 = records.tank.get('T09');
    expect(done.ok && done.value.updated[0]?.to).toEqual({
      ...t09,
      shape: 'hexagon',
      insideDepthMm: 890,
      frontBowMm: 0,
      sideReturnMm: 0,
    });
  });

  test('a price is another record from today, and only one of today is put right', () => {
    const first = writeBoxes(tankTable, context, [{ row: 'T07', column: 'price', text: '219.50' }]);
    if (!first.ok) throw new Error('refused');
    const later = derive(applyChange(records, first.value), demoDay);
    const second = writeBoxes(tankTable, later, [{ row: 'T07', column: 'price', text: '220' }]);
    const price = { id: 'T07-1@2027-03-15', pack: 'T07-1', from: '2027-03-15', priceCoins: 21_950 };
    expect([first.value.added, first.value.updated, second.ok && second.value.updated]).toEqual([
      [{ kind: 'packPrice', record: price }],
      [],
      [{ kind: 'packPrice', from: price, to: { ...price, priceCoins: 22_000 } }],
    ]);
  });
});

/** Writes each text by itself, on the result of the one before. */
function oneByOne<Row extends BookRow>(table: BookTable<Row>, texts: readonly BoxText[]) {
  let now = records;
  const refused: RefusedBox[] = [];
  for (const text of texts) {
    const done = writeBoxes(table, derive(now, demoDay), [text]);
    if (done.ok) now = applyChange(now, done.value);
    else refused.push(...done.fault);
  }
  return refused.length > 0 ? { refused } : { records: now };
}

function together<Row extends BookRow>(table: BookTable<Row>, texts: readonly BoxText[]) {
  const done = writeBoxes(table, context, texts);
  return done.ok ? { records: applyChange(records, done.value) } : { refused: done.fault };
}

/** Texts of every kind, some of which no field accepts. */
const someTexts = [
  '',
  '7',
  '140',
  '900 mm',
  '1 1/2',
  'rectangle',
  'hexagon',
  'yes',
  'in packs',
  'L',
  'S1',
  '2027-04-02',
  'x',
];

/** Texts whose result differs between together and one by one. */
function unlike<Row extends BookRow>(table: BookTable<Row>): unknown {
  const made = table.add?.(context);
  const rows = [
    ...table
      .rows(context)
      .slice(0, 4)
      .map(({ id }) => id),
    made?.id ?? '',
    'gone',
  ];
  const columns = table.columns(context).map(({ key }) => key);
  const text = fc.record({
    row: fc.constantFrom(...rows),
    column: fc.constantFrom(...columns),
    text: fc.constantFrom(...someTexts),
  });
  const pasted = fc.array(text, { minLength: 1, maxLength: 12 });
  const agree = fc.property(pasted, (texts) => isDeepStrictEqual(together(table, texts), oneByOne(table, texts)));
  return fc.check(agree).counterexample;
}

describe('many fields at once', () => {
  test.each<[string, () => unknown]>([
    ['tanks', () => unlike(tankTable)],
    ['materials', () => unlike(materialTable)],
    ['plants', () => unlike(plantTable)],
    ['suppliers', () => unlike(supplierTable)],
    ['closed days', () => unlike(closedTable)],
  ])('%s are written as if each field were written after the one before', (_, found) => {
    expect(found()).toBeNull();
  });

  test('fields of a row that was just added are written with it', () => {
    const added = tankTable.add?.(context);
    if (!added) throw new Error('tanks cannot be added');
    const after = derive(applyChange(records, added.change), demoDay);
    const texts = [
      { row: added.id, column: 'label', text: 'Low tank' },
      { row: added.id, column: 'shape', text: 'hexagon' },
      { row: 'T07', column: 'damHeightMm', text: '140' },
      { row: added.id, column: 'insideLengthMm', text: '600' },
    ];
    const done = writeBoxes(tankTable, after, texts);
    const now = done.ok ? applyChange(after.records, done.value) : undefined;
    expect([now?.tank.get(added.id), now?.tank.get('T07')]).toEqual([
      expect.objectContaining({ label: 'Low tank', shape: 'hexagon', insideLengthMm: 600, insideDepthMm: 600 }),
      { ...t07, damHeightMm: 140 },
    ]);
  });

  test('refused fields are named in the order they were given, whichever round refused them', () => {
    const done = writeBoxes(tankTable, context, [
      { row: 'T07', column: 'damHeightMm', text: '140' },
      { row: 'T07', column: 'insideHeightMm', text: '100' },
      { row: 'T08', column: 'damHeightMm', text: 'deep' },
    ]);
    expect(done.ok ? [] : done.fault.map(({ row, column }) => `${row} ${column}`)).toEqual(['T07 Height', 'T08 Dam']);
  });
});
