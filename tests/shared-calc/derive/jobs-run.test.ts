import { derive } from '#shared-calc/derive/derived.ts';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { jobsToBuy } from '#shared-calc/derive/jobs-run.ts';
import { moveJob } from '#shared-calc/jobs/move-job.ts';
import { newJob } from '#shared-calc/jobs/new-job.ts';
import { recordDeposit } from '#shared-calc/jobs/record-deposit.ts';
import { keepStock } from '#shared-calc/jobs/keep-stock.ts';
import { applyChange } from '#shared-calc/records/change.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { sayJobFault } from '#shared-calc/words/say-job-fault.ts';
import { emptyStore, withBags } from '#tests/shared-calc/buy/lots.ts';
import { DEMO_DAY, demoRecords } from '#tests/demo-bench.ts';
import { after, faultOf, libraryJob, valueOf, written } from '#tests/shared-calc/jobs/demo-jobs.ts';
import { done } from '#tests/shared-calc/acts/do-act.ts';

const on = DEMO_DAY;
const demo = demoRecords();
const media = ['M01', 'M04', 'M05', 'M06', 'M07', 'M08', 'M09', 'M15'];

/** Jobs J02, J03 ... of one size each, soil laid flat, an empty Store. */
function jobsOf(tanks: readonly (readonly string[])[]): Records {
  let records: Records = emptyStore(demo);
  for (const sizes of tanks) {
    const made = newJob(records, {
      title: `For ${sizes.join(' ')}`,
      recipe: 'H1',
      sizes: sizes.map((tank) => ({ tank, count: 1 })),
      writings: [{ line: 'soil_rise', text: '0 mm' }],
      by: 'us',
      on,
    });
    records = applyChange(records, valueOf(made).change);
  }
  return records;
}

describe('jobsRun', () => {
  test('three jobs of one tank each are bought as the three sizes of one order: 249.80 for 344.70', () => {
    const records = jobsOf([['T03'], ['T07'], ['T08']]);
    const { run } = valueOf(derive(records, on).run({ jobs: ['J02', 'J03', 'J04'], materials: media }));
    const { togetherCoins, aloneCoins, landedTogetherCoins, landedAloneCoins } = run;
    expect([togetherCoins, aloneCoins, landedTogetherCoins, landedAloneCoins]).toEqual([
      24_980, 34_470, 25_580, 37_020,
    ]);
  });

  test('a job named twice is bought once', () => {
    const records = jobsOf([['T07']]);
    const { run } = valueOf(derive(records, on).run({ jobs: ['J02'] }));
    expect(valueOf(derive(records, on).run({ jobs: ['J02', 'J02'] })).run).toEqual(run);
  });

  test('the Store comes off first, but for what is kept for a job that is not on the run', () => {
    const records = libraryJob();
    const coir = (jobs: readonly string[], book: Records) =>
      valueOf(derive(book, on).run({ jobs, materials: ['M05'] })).run.materials[0]?.onHand;
    const reserved = after(records, keepStock(records, { job: 'J01', goods: 'M05', amount: 4, on }));
    expect([coir(['J02'], records), coir(['J02'], reserved), coir(['J01', 'J02'], reserved)]).toEqual([6, 2, 6]);
  });

  test('what is on hand beside the Store counts too', () => {
    const run = valueOf(
      derive(libraryJob(), on).run({ jobs: ['J02'], more: new Map([['M05', 1]]), materials: ['M05'] }),
    );
    // 7.0523 L are needed: 6 in the Store and 1 beside it leave a little to buy.
    expect(run.run.materials.map(({ onHand, packs }) => [onHand, packs.map((pack) => pack.amount)])).toEqual([
      [7, [9]],
    ]);
  });

  test('jobs without a deposit are bought and named', () => {
    const records = jobsOf([['T05'], ['T07']]);
    const paid = after(records, recordDeposit(records, { job: 'J03', coins: 100, on }));
    expect(valueOf(derive(paid, on).run({ jobs: ['J02', 'J03'] })).unpaid).toEqual(['J02']);
  });

  test.each<[string, Records, string, string]>([
    ['a job nobody knows', demoRecords(), 'J09', 'No job called J09. Jobs: J01.'],
    ['a job without a size', jobsOf([[]]), 'J02', 'J02 has no size yet: take one first.'],
    [
      'a job with a figure missing',
      written(libraryJob(), 'client', { litter: '' }),
      'J02',
      'J02: T05, leaves_need: Waits on litter. Needs a figure: litter.',
    ],
  ])('%s is refused', (_, records, job, says) => {
    const fault = faultOf(derive(records, on).run({ jobs: [job] }));
    expect(fault && sayJobFault(fault)).toBe(says);
  });

  test('together is never dearer than each alone, goods or landed, whatever the Store has', () => {
    const sizes = fc.array(fc.constantFrom('T01', 'T03', 'T05', 'T07'), { minLength: 1, maxLength: 2 });
    const store = fc.array(fc.tuple(fc.constantFrom(...media), fc.double({ min: 0, max: 40, noNaN: true })), {
      maxLength: 5,
    });
    fc.assert(
      fc.property(fc.array(sizes, { minLength: 1, maxLength: 4 }), store, (tanks, stocked) => {
        const bags = stocked.map(([of, amount], at) => ({ id: `K${at}`, of, amount, sealed: false }));
        const records = withBags(jobsOf(tanks), bags);
        const { run } = valueOf(derive(records, on).run({ jobs: tanks.map((_, at) => `J0${at + 2}`) }));
        expect(run.togetherCoins).toBeLessThanOrEqual(run.aloneCoins);
        expect(run.landedTogetherCoins).toBeLessThanOrEqual(run.landedAloneCoins);
        for (const each of run.materials) expect(each.costCoins).toBeLessThanOrEqual(each.aloneCoins);
      }),
      { numRuns: 12 },
    );
  });
});

describe('jobsToBuy', () => {
  test('the shopping run takes jobs whose deposit is in, until they are ordered', () => {
    const records = jobsOf([['T05'], ['T07'], ['T03']]);
    const paid = after(records, recordDeposit(records, { job: 'J02', coins: 100, on }));
    const both = after(paid, recordDeposit(paid, { job: 'J03', coins: 100, on }));
    expect(jobsToBuy(derive(both, on))).toEqual(['J02', 'J03']);
    expect(jobsToBuy(derive(after(both, moveJob(both, 'J02', 'ordered')), on))).toEqual(['J03']);
  });

  test('a job is on it again when the rest of an order is not coming', () => {
    const records = jobsOf([['T05']]);
    const paid = after(records, recordDeposit(records, { job: 'J02', coins: 100, on }));
    const { records: ordered } = done(paid, 'placeOrders', { jobs: ['J02'], note: '' });
    expect(jobsToBuy(derive(ordered, on))).toEqual([]);
    const { records: closed } = done(ordered, 'closeOrder', { order: 'O-0002' });
    expect(jobsToBuy(derive(closed, on))).toEqual(['J02']);
  });
});
