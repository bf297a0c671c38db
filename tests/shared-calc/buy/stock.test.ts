import { describe, expect, test } from 'vitest';
import { takeStock } from '#shared-calc/buy/stock.ts';

describe('takeStock', () => {
  test('the first takes what it uses, the next what is left', () => {
    const first = takeStock(
      new Map([['M05', 6]]),
      new Map([
        ['M05', 4],
        ['M06', 3],
      ]),
    );
    const next = takeStock(first.left, new Map([['M05', 4]]));
    expect([[...first.taken], [...next.taken], [...next.left]]).toEqual([[['M05', 4]], [['M05', 2]], [['M05', 0]]]);
  });
});
