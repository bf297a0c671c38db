import { describe, expect, test } from 'vitest';
import { blockOf, clipOf, readClip } from '#renderer/grid/clip.ts';
import { gridIndex } from '#renderer/grid/grid-model.ts';
import { readHtmlTable } from '#shared-calc/read/html-table.ts';

const rows = ['Litter depth, mm', 'Note'];
const model = {
  rows: rows.map((key) => ({ key, looks: [] })),
  columns: ['Lines', 'T03', 'T07'].map((title) => ({ key: title, title })),
  stops: [],
  rowName: (row: string) => row,
  copied: ({ row, column }: { readonly row: string; readonly column: string }) => {
    if (column === 'Lines') return row;
    return row === 'Note' ? '=2+3' : column === 'T03' ? '30' : '-4.5';
  },
};
const index = gridIndex(model);
const rect = (top: number, left: number, bottom = top, right = left) => ({ top, left, bottom, right });
const clip = (withNames: boolean, ...ranges: readonly ReturnType<typeof rect>[]) =>
  clipOf({ model, index, ranges, withNames });

describe('what is copied', () => {
  test('the text is bare, the table has names and units', () => {
    const { text = '', html = '' } = clip(false, rect(0, 1, 0, 2)) ?? {};
    expect([text, readHtmlTable(html)]).toEqual([
      '30\t-4.5',
      [
        ['', 'T03', 'T07'],
        ['Litter depth, mm', '30', '-4.5'],
      ],
    ]);
  });

  test('with names, the text has them, too', () => {
    expect(clip(true, rect(0, 1))?.text).toBe('\tT03\nLitter depth, mm\t30');
  });

  test('with the names themselves copied they stand once', () => {
    expect(clip(true, rect(0, 0, 0, 1))?.text).toBe('Lines\tT03\nLitter depth, mm\t30');
  });

  test('words that another program would run are words in the table; a negative figure stays one', () => {
    const html = clip(false, rect(0, 2, 1, 2))?.html ?? '';
    expect(readHtmlTable(html)?.map((row) => row[1])).toEqual(['T07', '-4.5', "'=2+3"]);
  });

  test.each([
    ['of the same rows lie side by side', [rect(0, 2, 1, 2), rect(0, 0, 1, 0)], 2, 2],
    ['of the same columns lie below each other', [rect(1, 1, 1, 2), rect(0, 1, 0, 2)], 2, 2],
  ])('ranges %s', (_, ranges, high, wide) => {
    const block = blockOf(ranges);
    expect([block?.length, block?.[0]?.length]).toEqual([high, wide]);
  });

  test('ranges that share neither are no block', () => {
    expect(clip(false, rect(0, 1), rect(1, 2))).toBeUndefined();
  });
});

describe('what is pasted', () => {
  const table = '<table><tr><td>1</td><td>2</td></tr></table>';
  test.each([
    ['tabs are read as they stand', { text: '5\t6', html: table }, [['5', '6']]],
    ['a table alone', { text: '', html: table }, [['1', '2']]],
    ['one text', { text: '60 mm', html: table }, [['60 mm']]],
    ['nothing', { text: '', html: '' }, undefined],
  ])('%s', (_, given, block) => {
    expect(readClip(given)).toEqual(block);
  });
});
