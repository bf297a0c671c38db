import { describe, expect, test } from 'vitest';
import { readChoice } from '#shared-calc/read/read-choice.ts';
import { failed, ok } from '#shared-calc/result.ts';
import { said } from '#shared-calc/words/say-entry-fault.ts';

const ways = [
  { value: 'packs', label: 'in packs' },
  { value: 'cut', label: 'cut to size' },
  { value: 'cup', label: 'cup by cup' },
];

describe('readChoice', () => {
  test.each([
    ['in packs', 'packs'],
    ['PACKS', 'packs'],
    ['in', 'packs'],
    ['cut', 'cut'],
    ['cut t', 'cut'],
    ['cup', 'cup'],
  ])('takes %s for %s', (text, value) => {
    expect(readChoice(text, 'Sold', ways)).toEqual(ok(value));
  });

  test('a beginning that several have is asked back', () => {
    expect(said(readChoice('cu', 'Sold', ways))).toEqual(failed('Sold: "cu" may be cut to size or cup by cup.'));
  });

  test('a word near one of them is asked back by it, any other by all', () => {
    expect([
      said(readChoice('in pack5', 'Sold', ways)),
      said(readChoice('loose', 'Sold', ways)),
      said(readChoice('', 'Sold', ways)),
    ]).toEqual([
      failed('Sold: nothing called "in pack5". Did you mean in packs?'),
      failed('Sold: nothing called "loose". It is one of in packs, cut to size, cup by cup.'),
      failed('Sold needs a word. It is one of in packs, cut to size, cup by cup.'),
    ]);
  });
});
