import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readTabText, writeTabText } from '#shared-calc/read/tab-text.ts';

describe('readTabText', () => {
  test.each([
    ['one box', '12 mm', [['12 mm']]],
    ['a row', '1\t2\t3', [['1', '2', '3']]],
    [
      'rows, with a line end after the last',
      '1\t2\r\n3\t4\r\n',
      [
        ['1', '2'],
        ['3', '4'],
      ],
    ],
    [
      'empty boxes',
      '\t\n\t',
      [
        ['', ''],
        ['', ''],
      ],
    ],
    ['an empty line between', '1\n\n3', [['1'], [''], ['3']]],
    ['a box with a line end in it', '"two\nlines"\tnext', [['two\nlines', 'next']]],
    ['a doubled quote', '"6"" pot"', [['6" pot']]],
    ['inches, where the quote opens nothing', '6"\t1 1/2 in', [['6"', '1 1/2 in']]],
    ['a quote that never closes', '"half\tdone', [['"half', 'done']]],
    ['nothing', '', [['']]],
  ])('%s', (_, text, rows) => {
    expect(readTabText(text)).toEqual(rows);
  });
});

describe('writeTabText', () => {
  test('what is copied comes back the same', () => {
    const box = fc.string({ unit: fc.constantFrom('a', '1', ' ', '"', '\t', '\n', ',', '=') });
    const rows = fc
      .integer({ min: 1, max: 4 })
      .chain((width) =>
        fc.array(fc.array(box, { minLength: width, maxLength: width }), { minLength: 1, maxLength: 4 }),
      );
    fc.assert(
      fc.property(rows, (given) => {
        // A single empty last row looks the same as a final line end.
        fc.pre(given.at(-1)?.join('') !== '' || (given[0]?.length ?? 0) > 1);
        expect(readTabText(writeTabText(given))).toEqual(given);
      }),
    );
  });
});
