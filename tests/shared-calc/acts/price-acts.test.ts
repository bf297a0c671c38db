import { describe, expect, test } from 'vitest';
import { pricesOf } from '#shared-calc/buy/pack-prices.ts';
import { DEMO_DAY, demoRecords } from '#tests/demo-bench.ts';
import { done, refused } from './do-act.ts';

const demo = demoRecords();
const dated = (records: typeof demo, pack: string) =>
  pricesOf(records, pack).map(({ from, priceCoins }) => [from, priceCoins]);

describe('putPrice', () => {
  test('a new price holds from its day and those before stay; one of the same day is put right', () => {
    const first = done(demo, 'putPrice', { material: 'M04', amount: 6, priceCoins: 780, from: '2027-05-01' });
    const again = done(first.records, 'putPrice', { material: 'M04', amount: 6, priceCoins: 800, from: '2027-05-01' });
    expect([first.label, dated(first.records, 'M04-6')[0], dated(again.records, 'M04-6')[0]]).toEqual([
      'M04 pack of 6 at 7.80 from 2027-05-01',
      ['2027-05-01', 780],
      ['2027-05-01', 800],
    ]);
    expect(dated(again.records, 'M04-6').slice(1)).toEqual(dated(demo, 'M04-6'));
  });

  test('a pack that the book has not yet comes with its price, today where no day is said', () => {
    const { label, records } = done(demo, 'putPrice', { material: 'M04', amount: 20, priceCoins: 1900 });
    expect([label, records.pack.get('M04-20'), dated(records, 'M04-20')]).toEqual([
      `M04 pack of 20 at 19.00 from ${DEMO_DAY}`,
      { id: 'M04-20', material: 'M04', amount: 20, supplier: 'S-hollin' },
      [[DEMO_DAY, 1900]],
    ]);
  });

  test('what is in no book has no price, and no day is made up', () => {
    expect(refused(demo, 'putPrice', { material: 'M44', amount: 1, priceCoins: 1 })).toMatch(
      /^No material called M44\./,
    );
    expect(refused(demo, 'putPrice', { material: 'M04', amount: 6, priceCoins: 1, from: '2027-02-30' })).toBe(
      'There is no 2027-02-30 in the calendar.',
    );
  });
});

describe('newPack', () => {
  test('no material has two packs of one amount', () => {
    expect(refused(demo, 'newPack', { material: 'M04', amount: 6 })).toBe('M04 has such a pack already.');
    expect(done(demo, 'newPack', { material: 'M04', amount: 20 }).label).toBe('pack of 20 L of M04');
  });
});
