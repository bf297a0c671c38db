import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sheetsOfList, type ListPaper } from '#renderer/print/list-paper.ts';

function listOf(widths: readonly number[], names = 4): ListPaper {
  const column = (key: string) => ({ key, head: key, figure: true });
  return {
    letterhead: [],
    notes: [],
    names: [column('name')],
    columns: widths.map((_, at) => column(`c${at}`)),
    groups: [
      {
        key: 'rows',
        rows: [{ key: '1', cellOf: (key) => ({ text: '8'.repeat(widths[Number(key.slice(1))] ?? names) }) }],
      },
    ],
  };
}

function keysOn(list: ListPaper): readonly (readonly string[])[] {
  return sheetsOfList(list).sheets.map((sheet) => sheet.map(({ key }) => key));
}

describe('sheetsOfList', () => {
  test('a narrow list stands upright on one sheet, a wider one lies on its side', () => {
    expect([
      sheetsOfList(listOf([6, 6, 6])).sideways,
      sheetsOfList(listOf(Array.from({ length: 16 }, () => 6))),
    ]).toEqual([false, { sideways: true, sheets: [expect.objectContaining({ length: 16 })] }]);
  });

  test('twelve sizes that do not fit beside each other stand six and six, not eleven and one', () => {
    expect(keysOn(listOf(Array.from({ length: 12 }, () => 14))).map(({ length }) => length)).toEqual([6, 6]);
  });

  test('every column stands on one sheet, in order, and no sheet is empty', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 90 }), { minLength: 1, maxLength: 220 }), (widths) => {
        const sheets = keysOn(listOf(widths));
        expect(sheets.flat()).toEqual(widths.map((_, at) => `c${at}`));
        expect(sheets.every(({ length }) => length > 0)).toBe(true);
      }),
    );
  });
});
