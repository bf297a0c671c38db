import { describe, expect, test } from 'vitest';
import { changedQuote } from '#shared-calc/jobs/changed-quote.ts';
import { quoteModel } from '#shared-calc/papers/quote-model.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';
import { issued, libraryJob, valueOf, withRecords, written } from '#tests/shared-calc/jobs/demo-jobs.ts';

/*
 * T05 with H1, Full kit, soil laid flat, worked by hand.
 * Media: clay 9.345/0.98*1.03 = 9.8218 L at 0.98: 9.63; mesh 0.505 m: 2.17; capping 3.2790 L: 3.93;
 * placed 18.69 - 0.418 - 0.9345 = 17.3375, loose 20.6868, inputs 23.5077: coir 3.60, bark 6.28, fern 7.93,
 * charcoal 3.48, moss 1.80; inoculant 20.687 g: 2.48; leaves 107.494 g: 5.59. Sum 46.89, over 0.6: 78.15.
 * Hardscape 3 panels 44.40, 2 branches 24.00, tube 13.50, pods 4.50, sealant 6.00: 92.40, over 0.6: 154.00.
 * Cover 10.00 + 0.249546 m2 at 46.50 = 11.60: 21.60, over 0.65: 33.23. Lamps 2*36.00 + 16.00, over 0.7: 125.71.
 * Mist 46.00 + 12.00 + 2.50, over 0.7: 86.43. Plants 12.40 + 17.20 + 18.50 + 11.70 + 11.70, over 0.55: 130.00.
 * Microfauna 6.00 + 8.00, over 0.4: 35.00. Work 614.35 min: 10.25 h at 43.00 = 440.75, over 0.75: 587.67.
 */
const quoteA = {
  tank: '211.43',
  media: '78.15',
  hardscape: '154.00',
  cover: '33.23',
  lamps: '125.71',
  mist: '86.43',
  plants: '130.00',
  microfauna: '35.00',
  work: '587.67',
};

describe('a quote and its revision, T05 Full, flat', () => {
  const first = issued(libraryJob(), 'A');

  test('quote A to the coin: 1,276.62 at 12 % and 165.00 at 4 %, deposit 40 % up to the next 5', () => {
    const { lines, net, tax, gross, deposit, atHandover } = quoteModel(first.body);
    expect(Object.fromEntries(lines.map(({ group, price }) => [group, price]))).toEqual(quoteA);
    expect({ net, gross, deposit, atHandover }).toEqual({
      net: '1441.62',
      gross: '1601.41',
      deposit: '645.00',
      atHandover: '956.41',
    });
    expect(tax.map(({ share, of, sum }) => [share, of, sum])).toEqual([
      ['12 %', '1276.62', '153.19'],
      ['4 %', '165.00', '6.60'],
    ]);
  });

  /*
   * The client: leaves 20 mm, 71.663 g, 3.73: media 45.03, over 0.6: 75.05.
   * We: clay waste 5 %, 10.0125 L, 9.81: media 45.21: 75.35; a builder's hour 1.00 more: 451.00: 601.33.
   * The suppliers: leaves 6.00 for 100 g, 4.30: media 45.78: 76.30; the tank 155.00: 221.43.
   */
  const revised = issued(dearer(ours(written(first.records, 'client', { litter: '20 mm' }))), 'B');

  test('quote B says what changed and by whom: the client, then we, then the prices', () => {
    const changed = valueOf(changedQuote(first.body, revised.body));
    expect(changed.lines.map(({ group, from, to, by }) => [group, from, to, by])).toEqual([
      ['media', 7815, 7505, 'client'],
      ['media', 7505, 7535, 'us'],
      ['work', 58_767, 60_133, 'us'],
      ['tank', 21_143, 22_143, 'supplier'],
      ['media', 7535, 7630, 'supplier'],
    ]);
    expect([changed.net, changed.sum]).toEqual([{ client: -310, us: 1396, supplier: 1095 }, 2181]);
    expect(quoteModel(revised.body).net).toBe('1463.43');
  });

  test('quote A still says what it said', () => {
    expect(revised.records.issuedQuote.get('Q-0001A')).toEqual(first.records.issuedQuote.get('Q-0001A'));
    expect(quoteModel(first.body).gross).toBe('1601.41');
  });
});

function ours(records: Records): Records {
  const waste = records.line.get('H1.drainage_waste');
  const builder = records.rate.get('R-builder');
  if (!waste || !builder) throw new Error('not the demo workshop');
  const house = withRecords(records, 'line', [{ ...waste, text: '5 %' }]);
  return withRecords(house, 'rate', [{ ...builder, coins: 3300 }]);
}

function dearer(records: Records): Records {
  return withRecords(records, 'packPrice', [
    { id: 'M15-100@new', pack: 'M15-100', from: DEMO_DAY, priceCoins: 600 },
    { id: 'T05-1@new', pack: 'T05-1', from: DEMO_DAY, priceCoins: 15_500 },
  ]);
}
