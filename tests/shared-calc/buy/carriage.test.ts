import { describe, expect, test } from 'vitest';
import { carriageOf, supplierBills } from '#shared-calc/buy/carriage.ts';
import { needsOf } from '#shared-calc/buy/needs.ts';
import { demoPrices, need } from './demo-goods.ts';

const terms = { carriageCoins: 750, freeFromCoins: 9000 };

describe('carriageOf', () => {
  test.each([
    { goods: 8999, coins: 750 },
    { goods: 9000, coins: 0 },
  ])('goods of $goods coins travel for $coins', ({ goods, coins }) => {
    expect(carriageOf(goods, terms)).toBe(coins);
  });

  test('a supplier without such a sum always asks its carriage', () => {
    expect(carriageOf(1_000_000, { carriageCoins: 1200 })).toBe(1200);
  });
});

describe('supplierBills', () => {
  test('a minimum is shown as what the order lacks, never added; own goods are on no bill', () => {
    const list = needsOf([need('PG', 6), need('SP', 2), need('VAN', 36)], { prices: demoPrices, stock: new Map() });
    expect(list.ok && supplierBills(list.value.needs, demoPrices)).toEqual([
      {
        supplier: 'marlvale',
        name: 'Marlvale Plant House',
        goodsCoins: 1860,
        carriageCoins: 950,
        shortOfMinimumCoins: 2140,
      },
    ]);
  });
});
