import { describe, expect, test } from 'vitest';
import { sayMoved, type MovedFacts } from '#shared-calc/words/say-moved.ts';

const plain: MovedFacts = {
  written: [{ label: 'Litter depth', size: 'T03', figure: '60 mm' }],
  moved: 14,
  sizes: 1,
  price: { from: 130_324, to: 131_097 },
  opened: [],
  closed: 0,
};
const money = (coins: number) => (coins / 100).toFixed(2);

describe('what an edit moved, in one line', () => {
  test.each<[string, Partial<MovedFacts>, string]>([
    ['a figure of one size', {}, 'Litter depth T03 60 mm: 14 figures moved, price 1310.97, up 7.73'],
    [
      'a price that falls, and one figure',
      { moved: 1, price: { from: 131_097, to: 130_324 } },
      'Litter depth T03 60 mm: 1 figure moved, price 1303.24, down 7.73',
    ],
    [
      'a price that stays',
      { moved: 2, price: { from: 5, to: 5 } },
      'Litter depth T03 60 mm: 2 figures moved, price 0.05 as before',
    ],
    [
      'nothing else',
      { moved: 0, price: { from: 5, to: 5 } },
      'Litter depth T03 60 mm: no other figure moved, price 0.05 as before',
    ],
    [
      'a check that does not hold any more, and two that do again',
      { opened: [{ level: 'advice', says: 'Litter stands over the dam.' }], closed: 2 },
      'Litter depth T03 60 mm: 14 figures moved, price 1310.97, up 7.73; new advice: Litter stands over the dam; 2 checks hold again',
    ],
  ])('%s', (_, facts, says) => expect(sayMoved({ ...plain, ...facts }, money)).toBe(says));

  test('a price that is not known is not said, and no price is made up of a part', () => {
    const { price: _, ...without } = plain;
    expect(sayMoved(without, money)).toBe('Litter depth T03 60 mm: 14 figures moved');
  });

  test('many checks are counted behind the first two', () => {
    const opened = ['A.', 'B.', 'C.', 'D.'].map((says) => ({ level: 'watch', says }) as const);
    expect(sayMoved({ ...plain, opened }, money)).toMatch(/; new watch: A; new watch: B; 2 more$/);
  });

  test('one line in several sizes, several lines, and an edit made elsewhere', () => {
    const { price: _, ...many } = plain;
    const inT07 = { label: 'Litter depth', size: 'T07', figure: '60 mm' };
    const same = { ...many, written: [...many.written, inT07], sizes: 2, moved: 28 };
    expect(sayMoved(same, money)).toBe('Litter depth in 2 sizes: 28 figures moved in 2 sizes');
    const two = { ...many, written: [...many.written, { ...inT07, label: 'Mix depth' }] };
    expect(sayMoved(two, money)).toBe('2 boxes: 14 figures moved');
    expect(sayMoved({ ...many, written: [] }, money)).toBe('14 figures moved');
  });
});
