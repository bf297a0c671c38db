import { derive } from '#shared-calc/derive/derived.ts';
import { describe, expect, test } from 'vitest';
import { moveJob } from '#shared-calc/jobs/move-job.ts';
import { touchesNow, touchesOn } from '#shared-calc/derive/price-touch.ts';
import { recordDeposit } from '#shared-calc/jobs/record-deposit.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';
import { after, issued, libraryJob, withRecords, written } from '#tests/shared-calc/jobs/demo-jobs.ts';

const today = DEMO_DAY;

function rise(records: Records, from: string = today): Records {
  return withRecords(records, 'packPrice', [{ id: 'T05-1@new', pack: 'T05-1', from, priceCoins: 15_500 }]);
}

function touches(records: Records, on: string = today) {
  return touchesNow(derive(records, on)).touches;
}

/** The tank 148.00 to 155.00 at cost, 211.43 to 221.43 before tax. */
const touched = {
  job: 'J02',
  title: 'Reading room',
  state: 'quoted',
  quote: 'Q-0001A',
  cost: { from: 98_364, to: 99_064 },
  net: { from: 144_162, to: 145_162 },
  margin: { from: 45_798, to: 45_098 },
};

describe('touchesNow', () => {
  const quoted = issued(libraryJob(), 'A').records;

  test('a rise dated on the day of the quote shows, with what it eats', () => {
    expect(touchesNow(derive(rise(quoted), today))).toEqual({
      touches: [touched],
      prices: [
        {
          pack: 'T05-1',
          material: 'T05',
          label: 'Rectangle 600 × 445 × 600',
          amount: 1,
          unit: 'each',
          from: today,
          beforeCoins: 14_800,
          coins: 15_500,
        },
      ],
    });
  });

  test('so does one that is written over the price that the quote was worked with', () => {
    const price = quoted.packPrice.get('T05-1@start');
    if (!price) throw new Error('no price');
    expect(touches(withRecords(quoted, 'packPrice', [{ ...price, priceCoins: 15_500 }]))).toEqual([touched]);
  });

  test('it is what was issued that is touched, not what is on the bench since', () => {
    expect(touches(rise(written(quoted, 'client', { kit: 'show' })))).toEqual([touched]);
  });

  test('a rise announced for a later day shows at once; asked for a day before it, it does not', () => {
    const announced = derive(rise(quoted, '2027-04-01'), today);
    expect(touchesNow(announced).touches).toEqual([touched]);
    expect(touchesOn(announced, '2027-03-31').touches).toEqual([]);
  });

  test('dearer hours touch it as dearer goods do: 10.25 h at 1.00 more', () => {
    const builder = quoted.rate.get('R-builder');
    if (builder?.coins === undefined) throw new Error('no builder');
    const dearer = withRecords(quoted, 'rate', [{ ...builder, coins: builder.coins + 100 }]);
    expect(touches(dearer).map(({ cost }) => cost.to - cost.from)).toEqual([1025]);
  });

  test('a quote issued at the new price is not touched by it', () => {
    expect(touchesNow(derive(issued(rise(libraryJob()), 'A').records, today))).toEqual({ touches: [], prices: [] });
  });

  test('a quote past its last day is open no more', () => {
    expect(touches(rise(quoted), '2027-03-30')).toEqual([]);
    expect(touches(rise(quoted), '2027-03-29')).toEqual([touched]);
  });

  test('a job that is paid and not yet bought is touched, however long ago it was quoted', () => {
    const paid = after(quoted, recordDeposit(quoted, { job: 'J02', coins: 100, on: today }));
    expect(touches(rise(paid), '2027-05-01')).toEqual([{ ...touched, state: 'deposit in' }]);
  });

  test('an enquiry, a job that is ordered, and one that does not use it are not', () => {
    const paid = after(quoted, recordDeposit(quoted, { job: 'J02', coins: 100, on: today }));
    const ordered = after(paid, moveJob(paid, 'J02', 'ordered'));
    const sand = withRecords(quoted, 'packPrice', [{ id: 'M13-5@new', pack: 'M13-5', from: today, priceCoins: 999 }]);
    expect([touches(rise(ordered)), touches(rise(libraryJob())), touches(sand)]).toEqual([[], [], []]);
  });
});
