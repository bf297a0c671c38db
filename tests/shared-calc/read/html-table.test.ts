import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readHtmlTable, writeHtmlTable } from '#shared-calc/read/html-table.ts';

describe('readHtmlTable', () => {
  test.each([
    ['rows of cells', '<table><tr><td>a</td><td>b</td></tr><tr><td>c</td></tr></table>', [['a', 'b'], ['c']]],
    [
      'what stands around it, styles and remarks left out',
      '<html><head><style>td{x}</style></head><body><!--StartFragment--><table border=0><tbody><tr><td style="a">60 mm</td></tr></tbody></table>',
      [['60 mm']],
    ],
    [
      'cells and rows that are not closed',
      '<table><tr><td>a<td>b<tr><td>c<td>d</table>',
      [
        ['a', 'b'],
        ['c', 'd'],
      ],
    ],
    [
      'a head over two columns',
      '<table><tr><th colspan="2">Size</th><th>Price</th></tr></table>',
      [['Size', '', 'Price']],
    ],
    [
      'marks written as names and numbers',
      '<table><tr><td>&lt;5&nbsp;&amp; 1&#189;&#x2033;</td></tr></table>',
      [['<5 & 1½″']],
    ],
    ['a line break as a blank', '<table><tr><td>one<br>two <b>bold</b></td></tr></table>', [['one two bold']]],
    ['the first of two tables', '<table><tr><td>1</td></tr></table><table><tr><td>2</td></tr></table>', [['1']]],
  ])('%s', (_, html, rows) => {
    expect(readHtmlTable(html)).toEqual(rows);
  });

  test('a text without a table is no table', () => {
    expect([readHtmlTable('<p>30 mm</p>'), readHtmlTable(''), readHtmlTable('<table></table>')]).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
  });

  test('what is written is read again, whatever stands in the cells', () => {
    const cell = fc.string().map((text) => text.replaceAll(/\s+/g, ' ').trim());
    const row = fc.array(cell, { minLength: 1, maxLength: 4 });
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 4 }), (rows) => {
        const written = writeHtmlTable(rows.map((cells) => cells.map((text, at) => ({ text, head: at === 0 }))));
        expect(readHtmlTable(written)).toEqual(rows);
      }),
    );
  });
});
