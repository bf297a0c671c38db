import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readCsv } from '#shared-calc/read/csv-rows.ts';
import { csvText } from '#shared-calc/papers/csv-text.ts';

/** Records of RFC 4180 section 2, each with the fields it stands for; rule numbers as there, 6 and 7 from memory. */
const published: readonly (readonly [string, string, readonly (readonly string[])[]])[] = [
  [
    '1: a record a line, CRLF at its end',
    'aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n',
    [
      ['aaa', 'bbb', 'ccc'],
      ['zzz', 'yyy', 'xxx'],
    ],
  ],
  [
    '2: the last line may end without',
    'aaa,bbb,ccc\r\nzzz,yyy,xxx',
    [
      ['aaa', 'bbb', 'ccc'],
      ['zzz', 'yyy', 'xxx'],
    ],
  ],
  [
    '5: fields may stand in quotes',
    '"aaa","bbb","ccc"\r\nzzz,yyy,xxx\r\n',
    [
      ['aaa', 'bbb', 'ccc'],
      ['zzz', 'yyy', 'xxx'],
    ],
  ],
  [
    '6: a line break in quotes',
    '"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx\r\n',
    [
      ['aaa', 'b\r\nbb', 'ccc'],
      ['zzz', 'yyy', 'xxx'],
    ],
  ],
  ['7: a quote is doubled', '"aaa","b""bb","ccc"\r\n', [['aaa', 'b"bb', 'ccc']]],
];

/** First letters that CWE-1236, OWASP and ASVS 5.0 1.2.10 name, and the full-width forms of later OWASP text; the lists of OWASP are from memory. */
const signs = ['=', '+', '-', '@', '\uff1d', '\uff0b', '\uff0d', '\uff20'];
const dangerous = [...signs, '\t', '\r', '\n', '\0'];

function readBack(text: string, delimiter = ','): readonly (readonly string[])[] {
  return parse(text, { delimiter, record_delimiter: '\r\n', relax_column_count: false });
}

describe('readCsv against RFC 4180', () => {
  test.each(published)('%s', (_, text, records) => {
    const heading = 'one,two,three\r\n';
    const parsed = readCsv(heading + text, ['one', 'two', 'three']);
    expect(parsed.refused).toEqual([]);
    expect(parsed.rows.map(({ fields }) => Object.values(fields))).toEqual(records);
  });

  test('4: a record with another number of fields than the heading is named', () => {
    expect(readCsv('one,two,three\r\naaa,bbb\r\nzzz,yyy,xxx\r\n', ['one']).refused).toEqual([
      { row: 2, fault: { kind: 'row-length', has: 2, wants: 3 } },
    ]);
  });
});

describe('csvText against RFC 4180, read back by another reader', () => {
  test.each(published)('%s', (_, __, records) => {
    expect(readBack(csvText(records))).toEqual(records);
  });

  test('every line ends with CRLF, the last too', () => {
    expect(
      csvText([
        ['aaa', 'bbb'],
        ['zzz', 'yyy'],
      ]),
    ).toBe('aaa,bbb\r\nzzz,yyy\r\n');
  });

  test('6, 7: commas, quotes and breaks are quoted, plain fields are not', () => {
    expect(csvText([['a,b', 'say "no"', 'two\r\nlines', 'plain', ' spaced ']])).toBe(
      '"a,b","say ""no""","two\r\nlines",plain," spaced "\r\n',
    );
  });

  const word = fc
    .string({
      unit: fc.constantFrom('a', 'Z', '9', ' ', ',', ';', '"', "'", '\r', '\n', '.', '\u00e4', '\u03a9', '\u{1f33f}'),
    })
    .filter((text) => !dangerous.includes(text.charAt(0)));

  test.each([
    [false, ','],
    [true, ';'],
  ])('any words come back as they were, field by field (decimal comma %s)', (decimalComma, delimiter) => {
    fc.assert(
      fc.property(fc.array(fc.tuple(word, word, word), { minLength: 1, maxLength: 6 }), (rows) => {
        const back = readBack(csvText(rows, { decimalComma }), delimiter);
        expect(back.map((row) => row.map(bare))).toEqual(rows.map((row) => row.map(bare)));
      }),
    );
  });

  test.each([
    [false, ','],
    [true, ';'],
  ])('any number comes back to the last digit (decimal comma %s)', (decimalComma, delimiter) => {
    const number = fc.double({ noNaN: true, noDefaultInfinity: true });
    fc.assert(
      fc.property(number, number, (one, other) => {
        const [row = []] = readBack(csvText([[one, other]], { decimalComma }), delimiter);
        const read = row.map((text) => Number(decimalComma ? text.replace(',', '.') : text));
        expect(read.map((each) => each + 0)).toEqual([one + 0, other + 0]);
      }),
    );
  });
});

describe('csvText against CWE-1236 and OWASP: words that a program would run', () => {
  test.each(dangerous.map((letter) => [JSON.stringify(letter), letter]))(
    'after %s stands an apostrophe first',
    (_, letter) => {
      const [[field = ''] = []] = readBack(csvText([[`${letter}HYPERLINK("http://evil.example")`, 'x']]));
      expect(field.charAt(0)).toBe("'");
    },
  );

  test('a leading minus of a true number or an amount stays', () => {
    expect(csvText([[-5, -0.25, { amount: '-114.40' }]])).toBe('-5,-0.25,-114.40\r\n');
    expect(csvText([[-5, -0.25, { amount: '-114.40' }]], { decimalComma: true })).toBe('-5;-0,25;-114,40\r\n');
  });

  test('blanks, quotes and marks that are not seen do not hide what comes after them', () => {
    const cover = fc.array(fc.constantFrom(' ', '\u00a0', '"', "'", '\u200b', '\u202e', '\ufeff', '\u3000'), {
      maxLength: 4,
    });
    fc.assert(
      fc.property(cover, fc.constantFrom(...signs), fc.string(), (before, letter, after) => {
        const [[field = ''] = []] = readBack(csvText([[before.join('') + letter + after, 'x']]));
        expect(field.charAt(0)).toBe("'");
      }),
    );
  });
});

/** What was made harmless, without its apostrophe. */
function bare(text: string): string {
  return text.replace(/^'+/, '');
}
