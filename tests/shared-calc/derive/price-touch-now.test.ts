import { derive } from '#shared-calc/derive/derived.ts';
import { describe, expect, test } from 'vitest';
import { touchesNow } from '#shared-calc/derive/price-touch.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';
import { issued, libraryJob, withRecords } from '#tests/shared-calc/jobs/demo-jobs.ts';

/** The tank of the library's quote goes from 148.00 to 160.00 on a day. */
function dearerTank(records: Records, from: string): Records {
  const pack = [...records.pack.values()].find(({ material }) => material === 'T05');
  if (!pack) throw new Error('no T05');
  return withRecords(records, 'packPrice', [{ id: 'P-new', pack: pack.id, from, priceCoins: 16_000 }]);
}

describe('touchesNow', () => {
  test('a price that rose after a quote was issued eats that much of its margin', () => {
    const records = dearerTank(issued(libraryJob(), 'A').records, '2027-03-10');
    const { touches, prices } = touchesNow(derive(records, '2027-03-12'));
    // Cost + 12.00; were it quoted anew, 12.00 / (1 - 0.30) = 17.14 more before tax, to the coin of each line.
    expect(touches.map(({ job, quote, cost, net }) => [job, quote, cost.to - cost.from, net.to - net.from])).toEqual([
      ['J02', 'Q-0001A', 1200, 1714],
    ]);
    expect(prices).toEqual([
      {
        material: 'T05',
        label: 'Rectangle 600 × 445 × 600',
        amount: 1,
        unit: 'each',
        from: '2027-03-10',
        beforeCoins: 14_800,
        coins: 16_000,
      },
    ]);
  });

  test('a rise that is announced shows before its day', () => {
    const records = dearerTank(issued(libraryJob(), 'A').records, '2027-05-01');
    expect(touchesNow(derive(records, '2027-03-12')).touches.map(({ cost }) => cost.to - cost.from)).toEqual([1200]);
  });

  test('a quote issued at the new price is not touched by it', () => {
    const dearer = dearerTank(libraryJob(), DEMO_DAY);
    expect(touchesNow(derive(issued(dearer, 'A').records, '2027-03-12'))).toEqual({ touches: [], prices: [] });
  });

  test('a quote past its last day is open no more', () => {
    const records = dearerTank(issued(libraryJob(), 'A').records, '2027-03-10');
    expect(touchesNow(derive(records, '2027-03-30')).touches).toEqual([]);
  });
});
