import { derive } from '#shared-calc/derive/derived.ts';
import { describe, expect, test } from 'vitest';
import { moveJob } from '#shared-calc/jobs/move-job.ts';
import { priceTouch } from '#shared-calc/derive/price-touch.ts';
import { recordDeposit } from '#shared-calc/jobs/record-deposit.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';
import { after, issued, libraryJob, withRecords, written } from '#tests/shared-calc/jobs/demo-jobs.ts';

const today = DEMO_DAY;

function rise(records: Records, from: string = today): Records {
  return withRecords(records, 'packPrice', [{ id: 'T05-1@new', pack: 'T05-1', from, priceCoins: 15_500 }]);
}

/** The tank 148.00 to 155.00 at cost, 211.43 to 221.43 before tax. */
const touched = {
  job: 'J02',
  title: 'Reading room',
  cost: { from: 98_364, to: 99_064 },
  net: { from: 144_162, to: 145_162 },
};

describe('priceTouch', () => {
  const quoted = issued(libraryJob(), 'A').records;

  test('an open quote is told with what the rise eats of it', () => {
    expect(priceTouch(quoted, derive(rise(quoted), today))).toEqual([
      { ...touched, state: 'quoted', quote: 'Q-0001A' },
    ]);
  });

  test('it is what was issued that is touched, not what is on the bench since', () => {
    const edited = written(quoted, 'client', { kit: 'show' });
    expect(priceTouch(edited, derive(rise(edited), today))).toEqual([
      { ...touched, state: 'quoted', quote: 'Q-0001A' },
    ]);
  });

  test('a rise announced for a later day shows at once', () => {
    expect(priceTouch(quoted, derive(rise(quoted, '2027-04-01'), today)).map(({ cost }) => cost)).toEqual([
      touched.cost,
    ]);
  });

  test('a quote past its last day is open no more', () => {
    expect(priceTouch(quoted, derive(rise(quoted), '2027-03-30'))).toEqual([]);
    expect(priceTouch(quoted, derive(rise(quoted), '2027-03-29')).length).toBe(1);
  });

  test('a job that is paid and not yet bought is touched, with or without a quote', () => {
    const paid = (records: Records) => after(records, recordDeposit(records, { job: 'J02', coins: 100, on: today }));
    const [bare, sold] = [paid(libraryJob()), paid(quoted)];
    expect(priceTouch(bare, derive(rise(bare), today))).toEqual([
      { ...touched, state: 'deposit in', quote: undefined },
    ]);
    expect(priceTouch(sold, derive(rise(sold), '2027-05-01'))).toEqual([
      { ...touched, state: 'deposit in', quote: 'Q-0001A' },
    ]);
  });

  test('an enquiry, a job that is ordered, and one that does not use it are not', () => {
    const paid = after(quoted, recordDeposit(quoted, { job: 'J02', coins: 100, on: today }));
    const ordered = after(paid, moveJob(paid, 'J02', 'ordered'));
    const enquiry = libraryJob();
    expect(priceTouch(ordered, derive(rise(ordered), today))).toEqual([]);
    expect(priceTouch(enquiry, derive(rise(enquiry), today))).toEqual([]);
    const sand = withRecords(quoted, 'packPrice', [{ id: 'M13-5@new', pack: 'M13-5', from: today, priceCoins: 999 }]);
    expect(priceTouch(quoted, derive(sand, today))).toEqual([]);
  });
});
