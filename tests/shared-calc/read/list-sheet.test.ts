import { describe, expect, test } from 'vitest';
import { readSheet } from '#shared-calc/read/list-sheet.ts';

function read(text: string, ...known: readonly string[]) {
  const done = readSheet(text, (cells) => cells.filter((cell) => known.includes(cell)).length);
  return done.ok
    ? { heading: done.value.heading, rows: done.value.rows.map(({ row, cells }) => [row, ...cells]) }
    : done.fault;
}

describe('readSheet', () => {
  test.each([
    ['commas', 'a,b\r\n1,"2,5"\r\n', [[1, '1', '2,5']]],
    ['semicolons', 'a;b\n1;2,5\n', [[1, '1', '2,5']]],
    ['tabs', 'a\tb\r1\t2,5\r', [[1, '1', '2,5']]],
    ['bars', 'a|b\n1|2,5', [[1, '1', '2,5']]],
  ])('%s are found', (_, text, rows) => {
    expect(read(text)).toEqual({ heading: ['a', 'b'], rows });
  });

  test('titles above the heading are passed over, with what is known of it or without', () => {
    const text = 'Spring list, 2027\n\nno;item;price\nX1;bark;4,60\nX2;moss;9,20\n';
    const rows = [
      [1, 'X1', 'bark', '4,60'],
      [2, 'X2', 'moss', '9,20'],
    ];
    expect(read(text)).toEqual({ heading: ['no', 'item', 'price'], rows });
    expect(read(`a;b;c\n${text}`, 'price')).toEqual({ heading: ['no', 'item', 'price'], rows });
  });

  test('a title that a spreadsheet program has filled up with empty cells is no heading', () => {
    expect(read('Spring list;;\n;;\nno;item;price\nX1;bark;4,60\n')).toEqual({
      heading: ['no', 'item', 'price'],
      rows: [[1, 'X1', 'bark', '4,60']],
    });
  });

  test('rows count from 1 under the heading, blank ones too', () => {
    expect(read('a,b\n1,2\n\n,\n3,4\n')).toEqual({
      heading: ['a', 'b'],
      rows: [
        [1, '1', '2'],
        [4, '3', '4'],
      ],
    });
  });

  test('a cell may go on over lines; a quote that is never closed takes no other row with it', () => {
    expect(read('a,b\n"1\nmore",2\n3,4')).toMatchObject({
      rows: [
        [1, '1 more', '2'],
        [2, '3', '4'],
      ],
    });
    expect(read('a,b\n1,"2\n3,4\n"5",6\n')).toMatchObject({
      rows: [
        [1, '1', '"2'],
        [2, '3', '4'],
        [3, '5', '6'],
      ],
    });
    expect(read('a,b,c\n"1,2,3\n4,5,6\nx"\n')).toMatchObject({
      rows: [
        [1, '"1', '2', '3'],
        [2, '4', '5', '6'],
        [3, 'x"'],
      ],
    });
  });

  test('a table of a page is read as its words', () => {
    const page = `<html><!--StartFragment--><table><tr><th>Item</th><th colspan="2">Price &amp; day</th></tr>
      <tr><td><b>Bark</b>,<br>fine</td><td>&#36;4&#x2e;60</td><td>2027-01-12</td></tr></table>`;
    expect(read(page)).toEqual({
      heading: ['Item', 'Price & day', ''],
      rows: [[1, 'Bark, fine', '$4.60', '2027-01-12']],
    });
  });

  test('words that a program would run are words', () => {
    expect(read("a,b\n=cmd|'/c calc'!A1,'=1+1\n")).toMatchObject({ rows: [[1, "=cmd|'/c calc'!A1", '=1+1']] });
  });

  test('a heading alone has no rows; over 100,000 rows are refused', () => {
    expect(read('a,b\n')).toEqual({ kind: 'no-rows' });
    expect(read('')).toEqual({ kind: 'no-rows' });
    expect(read(`a,b\n${'1,2\n'.repeat(100_001)}`)).toEqual({ kind: 'too-many-rows', most: 100_000 });
  });
});
