import { describe, expect, test } from 'vitest';
import { contextOf } from '#renderer/books/book-hands.ts';
import { layOut, rowsIn, spotOf } from '#renderer/books/book-layout.ts';
import { copyFields, emptyFields, fillDown, fillRight, pasteFields } from '#renderer/books/book-writing.ts';
import { speakField } from '#renderer/books/paint-field.ts';
import { namesOf, rangeOf } from '#renderer/books/range-names.ts';
import { tankTable } from '#renderer/places/tank-book/tank-rows.ts';
import { demoDay, demoRecords } from '#tests/renderer/demo-records.ts';

const layout = layOut(tankTable, contextOf(demoRecords(), demoDay));
const range = { anchor: { row: 0, column: 3 }, tip: { row: 1, column: 5 } };

describe('copyFields', () => {
  test('gives figures as they would be written, a row a line', () => {
    expect(copyFields(layout, range)).toBe('300\t300\t300\n295\t295\t445');
  });
});

describe('pasteFields', () => {
  test('one text fills the range, what stays the same left out', () => {
    expect(pasteFields(layout, range, '300\n')).toEqual([
      { row: 'T02', column: 'insideLengthMm', text: '300' },
      { row: 'T02', column: 'insideDepthMm', text: '300' },
      { row: 'T02', column: 'insideHeightMm', text: '300' },
    ]);
  });

  test('a block goes down and right and ends with the book', () => {
    const last = { row: layout.rows.length - 1, column: 3 };
    expect(pasteFields(layout, { anchor: last, tip: last }, '410\n420\n')).toEqual([
      { row: 'T12', column: 'insideLengthMm', text: '410' },
    ]);
  });
});

describe('fillRight', () => {
  test('the first field of each line goes into those at its right', () => {
    expect(fillRight(layout, range)).toEqual([{ row: 'T02', column: 'insideHeightMm', text: '295' }]);
  });
});

describe('fillDown', () => {
  test('the first line of the range goes into those below it, what stays as it is left out', () => {
    expect(fillDown(layout, { anchor: { row: 0, column: 0 }, tip: { row: 1, column: 4 } })).toEqual([
      { row: 'T02', column: 'label', text: 'Rectangle 300 × 300 × 300' },
      { row: 'T02', column: 'insideLengthMm', text: '300' },
      { row: 'T02', column: 'insideDepthMm', text: '300' },
    ]);
  });
});

describe('emptyFields', () => {
  test('only what is written in and not empty is emptied', () => {
    expect(emptyFields(layout, { anchor: { row: 0, column: 0 }, tip: { row: 0, column: 2 } })).toEqual([
      { row: 'T01', column: 'label', text: '' },
      { row: 'T01', column: 'shape', text: '' },
    ]);
  });
});

describe('speakField', () => {
  test('says the field, the row, the figure with its unit', () => {
    const [row] = layout.rows;
    const said = layout.columns.map((column) => (row ? speakField({ row, column }) : ''));
    expect([said[3], said[6], said[13], said[16]]).toEqual([
      'Length, T01, 300 mm',
      'Bow, T01, empty',
      'Price, T01, 46.00 cr',
      'Note, T01, empty',
    ]);
  });
});

describe('rangeOf', () => {
  test('a range stays on its fields when rows come before it', () => {
    const names = namesOf(layout, range);
    const fewer = { ...layout, rows: layout.rows.slice(1) };
    expect([rangeOf(layout, names), rangeOf(fewer, names), rowsIn(layout, range), spotOf(fewer, 'T01')]).toEqual([
      range,
      { anchor: { row: 0, column: 5 }, tip: { row: 0, column: 5 } },
      ['T01', 'T02'],
      undefined,
    ]);
  });
});
