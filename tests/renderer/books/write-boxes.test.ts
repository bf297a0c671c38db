import { describe, expect, test } from 'vitest';
import { contextOf } from '#renderer/books/book-hands.ts';
import { sayRefused, writeBoxes } from '#renderer/books/write-boxes.ts';
import { plantTable } from '#renderer/places/plant-book/plant-book-place.tsx';
import { tankTable } from '#renderer/places/tank-book/tank-rows.ts';
import { applyChange, emptyChange } from '#shared-calc/records/change.ts';
import { failed, ok } from '#shared-calc/result.ts';
import { demoDay, demoRecords } from '#tests/renderer/demo-records.ts';

const records = demoRecords();
const context = contextOf(records, demoDay);
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
    const later = contextOf(applyChange(records, first.value), demoDay);
    const second = writeBoxes(tankTable, later, [{ row: 'T07', column: 'price', text: '220' }]);
    const price = { id: 'T07-1@2027-03-15', pack: 'T07-1', from: '2027-03-15', priceCoins: 21_950 };
    expect([first.value.added, first.value.updated, second.ok && second.value.updated]).toEqual([
      [{ kind: 'packPrice', record: price }],
      [],
      [{ kind: 'packPrice', from: price, to: { ...price, priceCoins: 22_000 } }],
    ]);
  });
});
