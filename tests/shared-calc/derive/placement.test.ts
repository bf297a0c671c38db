import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { balance, goodsInLedger, lotsOf, NOTHING, stockOf } from '#shared-calc/buy/ledger.ts';
import { orderStanding } from '#shared-calc/buy/order-standing.ts';
import { actTable, type ActInputs, type ActName } from '#shared-calc/acts/all-acts.ts';
import { addDays } from '#shared-calc/calendar/day.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import { placementOf } from '#shared-calc/derive/placement.ts';
import { newJob } from '#shared-calc/jobs/new-job.ts';
import { applyChange } from '#shared-calc/records/change.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { DEMO_DAY, demoRecords } from '#tests/demo-bench.ts';
import { after, valueOf } from '#tests/shared-calc/jobs/demo-jobs.ts';
import { recordDeposit } from '#shared-calc/jobs/record-deposit.ts';

/** The demo with some paid jobs of one size each, J02 and on. */
function paidJobs(tanks: readonly string[], records = demoRecords()): Records {
  return tanks.reduce((now, tank, at) => {
    const sizes = [{ tank, count: 1 }];
    const made = newJob(now, { title: tank, recipe: 'H1', sizes, writings: [], by: 'us', on: DEMO_DAY });
    const next = applyChange(now, valueOf(made).change);
    return after(next, recordDeposit(next, { job: `J0${at + 2}`, coins: 100, on: DEMO_DAY }));
  }, records);
}

/** The book after an act on a day; as it was where it is refused. */
function tried<N extends ActName>(records: Records, name: N, { on, ...input }: ActInputs[N] & { on: string }): Records {
  const change = actTable[name].run(derive(records, on), input as ActInputs[N]);
  return change.ok ? applyChange(records, change.value) : records;
}

type Step = (records: Records, on: string) => Records;

const job = fc.constantFrom('J02', 'J03', 'J04');
const order = fc.integer({ min: 1, max: 8 }).map((n) => `O-000${n}`);
const step: fc.Arbitrary<Step> = fc.oneof(
  fc.subarray(['J02', 'J03', 'J04'], { minLength: 1 }).map(
    (jobs): Step =>
      (records, on) =>
        tried(records, 'placeOrders', { jobs, note: '', on }),
  ),
  fc.constantFrom('M01-10', 'M04-6', 'M07-8').map(
    (pack): Step =>
      (records, on) =>
        tried(records, 'newOrder', { supplier: 'S-hollin', packs: [{ pack, count: 2 }], note: '', on }),
  ),
  fc.tuple(order, fc.integer({ min: 1, max: 9 }), fc.integer({ min: 1, max: 4 })).map(
    ([id, n, count]): Step =>
      (records, on) =>
        tried(records, 'receiveOrder', { order: id, lines: [{ n, count }], note: '', on }),
  ),
  order.map(
    (id): Step =>
      (records, on) =>
        tried(records, 'receiveOrder', { order: id, note: '', on }),
  ),
  order.map(
    (id): Step =>
      (records, on) =>
        tried(records, 'closeOrder', { order: id, on }),
  ),
  job.map(
    (id): Step =>
      (records, on) =>
        tried(records, 'release', { job: id, on }),
  ),
);

describe('placementOf', () => {
  const jobs = ['J02', 'J03', 'J04'];
  const book = paidJobs(['T05', 'T03', 'T07']);

  test('ordered = in + coming + closed, whatever was ordered, came in and was closed', () => {
    fc.assert(
      fc.property(fc.array(step, { minLength: 1, maxLength: 6 }), (steps) => {
        let on = DEMO_DAY;
        const records = steps.reduce((now, each) => each(now, (on = addDays(on, 1))), book);
        for (const placed of records.order.values()) {
          const { state, lines } = orderStanding(records, placed, on);
          for (const { line, came, open } of lines) {
            const coming = stockOf(records, [line.of], { asked: on }).lines.find(
              (each) => each.order === placed.id && each.line.n === line.n,
            );
            const closed = state === 'closed' ? line.count - came : 0;
            expect(came + open + closed).toBeCloseTo(line.count, 6);
            expect((coming?.open ?? 0) / line.amount).toBeCloseTo(open, 6);
          }
        }
      }),
      { numRuns: 25, seed: 8 },
    );
  });

  test('placing a run twice buys nothing the second time, and keeps nothing more', () => {
    fc.assert(
      fc.property(
        fc.array(step, { maxLength: 4 }),
        fc.subarray(jobs, { minLength: 1 }),
        fc.integer({ min: 0, max: 200 }),
        (steps, asked, days) => {
          let on = DEMO_DAY;
          const before = steps.reduce((now, each) => each(now, (on = addDays(on, 1))), book);
          const day = addDays(on, days);
          const once = tried(before, 'placeOrders', { jobs: asked, note: '', on: day });
          const again = valueOf(placementOf(derive(once, day), asked));
          expect(again.drafts).toEqual([]);
          expect(tried(once, 'placeOrders', { jobs: asked, note: '', on: day })).toEqual(once);
        },
      ),
      { numRuns: 25, seed: 9 },
    );
  });

  test('what is kept and promised is never more than there is, and never of another job', () => {
    fc.assert(
      fc.property(fc.array(step, { minLength: 1, maxLength: 6 }), (steps) => {
        let on = DEMO_DAY;
        const records = steps.reduce((now, each) => each(now, (on = addDays(on, 1))), book);
        for (const of of goodsInLedger(records)) {
          for (const lot of lotsOf(records, of)) expect(balance(lot, on)).toBeGreaterThanOrEqual(0);
          for (const { line, kept, open } of stockOf(records, [of], { asked: on }).lines) {
            const promised = [...kept.values()].reduce((sum, amount) => sum + amount, 0);
            expect(promised).toBeLessThanOrEqual(open + NOTHING);
            expect(line.for.reduce((sum, { amount }) => sum + amount, 0)).toBeLessThanOrEqual(
              line.count * line.amount + 1e-6,
            );
          }
        }
      }),
      { numRuns: 25, seed: 10 },
    );
  });

  test('an order is what the run asks from its supplier, to the coin', () => {
    const derived = derive(book, DEMO_DAY);
    const { drafts } = valueOf(placementOf(derived, jobs));
    const { suppliers } = valueOf(derived.run({ jobs })).run;
    const isQuotedByClass = (supplier: string) => supplier === 'S-marlvale';
    const asked = drafts
      .map(({ supplier, goodsCoins, carriageCoins }) => [supplier.id, goodsCoins, carriageCoins] as const)
      .filter(([supplier]) => !isQuotedByClass(supplier));
    const bills = suppliers
      .map(({ supplier, goodsCoins, carriageCoins }) => [supplier, goodsCoins, carriageCoins] as const)
      .filter(([supplier]) => !isQuotedByClass(supplier));
    expect(asked).toEqual(bills);
  });
});
