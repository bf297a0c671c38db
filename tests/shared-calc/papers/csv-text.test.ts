import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { csvText, harmless } from '#shared-calc/papers/csv-text.ts';

describe('csvText', () => {
  test('nothing to write is an empty file', () => {
    expect(csvText([])).toBe('');
  });

  test('figures keep all their digits, money its own', () => {
    expect(csvText([[16.837346938775514, 0.1 + 0.2, 1e21, { amount: '9.80' }, 0]])).toBe(
      '16.837346938775514,0.30000000000000004,1e+21,9.80,0\r\n',
    );
  });

  test('what is no number is an empty field', () => {
    expect(csvText([[Number.NaN, Number.POSITIVE_INFINITY, 'x']])).toBe(',,x\r\n');
  });

  test('with a decimal comma fields are parted by semicolons, and words keep their points', () => {
    expect(csvText([['a;b', 'v1.5', 16.84, { amount: '1289.25' }]], { decimalComma: true })).toBe(
      '"a;b";v1.5;16,84;1289,25\r\n',
    );
  });

  test('words that another program would part are quoted, under either sign', () => {
    const words = ['x;=1+1', 'x,=1+1', 'x\t=1+1', 'x|y'];
    expect(csvText([words])).toBe('"x;=1+1","x,=1+1","x\t=1+1","x|y"\r\n');
    expect(csvText([words], { decimalComma: true })).toBe('"x;=1+1";"x,=1+1";"x\t=1+1";"x|y"\r\n');
  });
});

describe('harmless', () => {
  test.each([
    ['=1+1', "'=1+1"],
    ['+49 30', "'+49 30"],
    ['-5 mm', "'-5 mm"],
    ['@SUM(A1)', "'@SUM(A1)"],
    ['\t=1', "'\t=1"],
    ['  =1', "'  =1"],
    ['"=1', '\'"=1'],
    ["'=1", "''=1"],
    ['\uff1d1', "'\uff1d1"],
    ['\u200b=1', "'\u200b=1"],
    ['\u001b=1', "'\u001b=1"],
    ['\u00ad=1', "'\u00ad=1"],
    ['\u180e=1', "'\u180e=1"],
    ['\u115f=1', "'\u115f=1"],
  ])('%j becomes %j', (words, safe) => {
    expect(harmless(words)).toBe(safe);
  });

  test.each(['Coir, as hydrated litres', 'a=b', '8-16 mm', 'x@y', '', ' ', "'", 'Rectangle 900 \u00d7 445'])(
    '%j stays',
    (words) => {
      expect(harmless(words)).toBe(words);
    },
  );

  test('a mark that ends words for some readers is shown as its picture', () => {
    expect(harmless('a\0=1')).toBe('a\u2400=1');
  });

  test('whatever the words, nothing is lost but NUL, and nothing is left to run', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), (words) => {
        const safe = harmless(words);
        const shown = words.replaceAll('\0', '\u2400');
        expect([shown, `'${shown}`]).toContain(safe);
        expect(/^[=+\-@\t\r\n]/.test(safe)).toBe(false);
      }),
    );
  });
});
