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

describe('confirmPrices', () => {
  test('a guess that was asked counts as any price; so does a guess that is written over', () => {
    const guess = { id: 'guess', pack: 'M04-6', from: DEMO_DAY, priceCoins: 700, guess: true };
    const guessed = done(demo, 'put', { kind: 'packPrice', record: guess }).records;
    const { guess: _, ...plain } = guess;
    const confirmed = done(guessed, 'confirmPrices', { materials: ['M04', 'M01'] });
    expect([confirmed.label, confirmed.records.packPrice.get('guess')]).toEqual(['2 prices asked', plain]);
    const written = done(guessed, 'putPrice', { material: 'M04', amount: 6, priceCoins: 720 }).records;
    expect(written.packPrice.get('guess')).toEqual({ ...plain, priceCoins: 720 });
    expect(refused(demo, 'confirmPrices', { materials: ['M44'] })).toMatch(/^No material called M44\./);
  });
});

describe('newPack', () => {
  test('no material has two packs of one amount', () => {
    expect(refused(demo, 'newPack', { material: 'M04', amount: 6 })).toBe('M04 has such a pack already.');
    expect(done(demo, 'newPack', { material: 'M04', amount: 20 }).label).toBe('pack of 20 L of M04');
  });
});
