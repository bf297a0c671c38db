import { describe, expect, test } from 'vitest';
import { derive } from '#shared-calc/derive/derived.ts';
import { allOpenPrices, openPricesOf } from '#shared-calc/derive/open-prices.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';
import { libraryJob } from '#tests/shared-calc/jobs/demo-jobs.ts';

/** The library's job with no price of some packs, and guesses of others. */
function without(packs: readonly string[], guessed: readonly string[] = []): Records {
  const records = libraryJob();
  const prices = [...records.packPrice.values()]
    .filter(({ pack }) => !packs.includes(pack))
    .map((price) => (guessed.includes(price.pack) ? { ...price, guess: true } : price));
  return { ...records, packPrice: new Map(prices.map((price) => [price.id, price])) };
}

describe('openPricesOf', () => {
  test('none where every price is known', () => {
    expect(openPricesOf(derive(libraryJob(), DEMO_DAY), ['J02'])).toEqual([]);
  });

  test('what has no price at all, then guesses by the money at stake; a pack that is not needed asks for nothing', () => {
    const derived = derive(without(['M25b-1', 'M01-45'], ['M07-8', 'M07-40', 'M01-10']), DEMO_DAY);
    const open = openPricesOf(derived, ['J02']);
    expect(open.map(({ material, pack, price, supplier }) => [material, pack?.id, price?.guess, supplier])).toEqual([
      ['M25b', 'M25b-1', undefined, 'S-greavel'],
      ['M01', 'M01-10', true, 'S-hollin'],
      ['M07', 'M07-8', true, 'S-hollin'],
    ]);
    const [none, dear = 0, cheap = 0] = open.map(({ stakeCoins }) => stakeCoins);
    expect([dear > cheap, cheap > 0, none]).toEqual([true, true, undefined]);
  });

  test('over the workshop also what no job asks for yet', () => {
    const derived = derive(without(['M25b-1', 'T12-1']), DEMO_DAY);
    expect(allOpenPrices(derived).map(({ material, jobs }) => [material, jobs])).toEqual([
      ['M25b', expect.arrayContaining(['J02'])],
      ['T12', []],
    ]);
  });
});
