import { describe, expect, test } from 'vitest';
import { goodsIn, priceBook, unitPriceCoins } from '#shared-calc/buy/price-book.ts';
import { sayBuyFault } from '#shared-calc/buy/buy-fault.ts';
import { demoGoods, demoPrices, demoRecords, withRecords } from './demo-goods.ts';

const day = { on: '2027-07-15', oldPriceDays: 180 };

describe('priceBook', () => {
  test('lists the packs of a material, smallest first, at the prices in force', () => {
    expect(demoGoods('M01')).toEqual({
      material: 'M01',
      label: 'expanded clay 8-16 mm',
      unit: 'L',
      supplier: 'hollin',
      sale: 'packs',
      keeps: true,
      packs: [
        { id: 'M01-10', amount: 10, priceCoins: 980, from: '2027-07-01', old: false },
        { id: 'M01-45', amount: 45, priceCoins: 3150, from: '2027-07-01', old: false },
      ],
    });
  });

  test('a tank is bought each, from its maker, and keeps', () => {
    expect(demoGoods('T05')).toMatchObject({ unit: 'each', sale: 'packs', keeps: true, supplier: 'greavel' });
  });

  test.each([
    { on: '2027-07-31', coins: 980 },
    { on: '2027-08-01', coins: 1040 },
    { on: '2027-09-01', coins: 1040 },
  ])('a new price counts from its day: on $on clay costs $coins', ({ on, coins }) => {
    const records = withRecords({ packPrice: [{ id: 'next', pack: 'M01-10', from: '2027-08-01', priceCoins: 1040 }] });
    expect(priceBook(records, { ...day, on }).goods.get('M01')?.packs[0]?.priceCoins).toBe(coins);
  });

  test.each([
    { on: '2027-12-28', old: false },
    { on: '2027-12-29', old: true },
  ])('a price of 1 July is old on $on: $old (more than 180 days)', ({ on, old }) => {
    expect(priceBook(demoRecords, { ...day, on }).goods.get('M01')?.packs[0]?.old).toBe(old);
  });

  test('a pack whose first price is yet to come is not on sale; the others are', () => {
    const records = withRecords({
      pack: [{ id: 'M01-80', material: 'M01', amount: 80 }],
      packPrice: [{ id: 'later', pack: 'M01-80', from: '2027-09-01', priceCoins: 5000 }],
    });
    expect(priceBook(records, day).goods.get('M01')).toEqual(demoGoods('M01'));
  });
});

describe('goodsIn', () => {
  test.each([
    {
      says: 'Pack of 10 L expanded clay 8-16 mm has no price since 2027-06-30.',
      book: priceBook(demoRecords, { ...day, on: '2027-06-30' }),
      material: 'M01',
    },
    {
      says: 'Pack of 0 T98 holds nothing: give it a size.',
      book: priceBook(withRecords({ tank: [tank('T98')], pack: [{ id: 'T98-0', material: 'T98', amount: 0 }] }), day),
      material: 'T98',
    },
    {
      says: 'T99 has no pack in the material book: add one, with its price.',
      book: priceBook(withRecords({ tank: [tank('T99')] }), day),
      material: 'T99',
    },
    {
      says: 'Nothing called M99 in the material book or the tank book.',
      book: demoPrices,
      material: 'M99',
    },
  ])('$says', ({ says, book, material }) => {
    const { packs, fault } = goodsIn(book, { material });
    expect({ packs, says: fault && sayBuyFault(fault) }).toEqual({ packs: [], says });
  });

  test('a pack without a price, and an empty one, are not on sale', () => {
    const pack = [
      { id: 'M01-80', material: 'M01', amount: 80 },
      { id: 'M01-0', material: 'M01', amount: 0 },
    ];
    const packPrice = [{ id: 'empty', pack: 'M01-0', from: '2027-01-01', priceCoins: 5 }];
    expect(goodsIn(priceBook(withRecords({ pack, packPrice }), day), { material: 'M01' })).toEqual(demoGoods('M01'));
  });
});

function tank(id: string) {
  return { id, label: id, shape: 'rectangle', clientsOwn: false, note: '' } as const;
}

describe('unitPriceCoins', () => {
  test('goes by the smallest pack on sale', () => {
    expect(unitPriceCoins(demoGoods('M01'))).toBe(98);
  });
});
