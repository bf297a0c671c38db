import { derive } from '#shared-calc/derive/derived.ts';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { takeFromStore } from '#shared-calc/acts/build-job.ts';
import { workedJob } from '#tests/worked-job.ts';
import { keepStock } from '#shared-calc/jobs/keep-stock.ts';
import { balance, lotsOf, stock } from '#shared-calc/buy/ledger.ts';
import { applyChange } from '#shared-calc/records/change.ts';
import { emptyStore, standsOf, withBags, type Bag } from '#tests/shared-calc/buy/lots.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';
import { libraryJob, valueOf } from './demo-jobs.ts';

const on = DEMO_DAY;
const library = libraryJob();
const materials = ['M01', 'M05', 'M07'] as const;

/** Bags of three materials, some reserved for the library's job or another, some in quarantine or past their best. */
const bags: fc.Arbitrary<readonly Bag[]> = fc
  .array(
    fc.record({
      of: fc.constantFrom(...materials),
      tenths: fc.integer({ min: 1, max: 300 }),
      sealed: fc.boolean(),
      job: fc.constantFrom(undefined, 'J01', 'J02'),
      held: fc.constantFrom('no', 'quarantine', 'past'),
    }),
    { maxLength: 10 },
  )
  .map((drawn) =>
    drawn.map(({ of, tenths, sealed, job, held }, at) => ({
      id: `K${at}`,
      of,
      amount: tenths / 10,
      sealed,
      job,
      ...(held === 'quarantine' && { until: '2028-12-01' }),
      ...(held === 'past' && { bestBefore: '2027-01-01' }),
    })),
  );

describe('what the Store keeps', () => {
  test('for another job is neither counted on a run, nor taken by a build', () => {
    const uses = valueOf(workedJob(library, { id: 'J02' }, on).uses());
    fc.assert(
      fc.property(bags, (store) => {
        const records = withStore(store);
        const run = valueOf(derive(records, on).run({ jobs: ['J02'], materials })).run;
        const built = applyChange(records, valueOf(takeFromStore(derive(records, on), 'J02')).change);
        for (const material of materials) {
          const mayGive = amountOf(store, (bag) => bag.of === material && mayServe(bag, 'J02'));
          const onHand = run.materials.find((need) => need.material === material)?.onHand ?? 0;
          expect(onHand).toBeCloseTo(mayGive, 6);
          const used = standsOf(records, material, on) - standsOf(built, material, on);
          expect(used).toBeCloseTo(Math.min(uses.get(material) ?? 0, mayGive), 6);
        }
        for (const bag of store.filter((each) => !mayServe(each, 'J02'))) {
          const lot = lotsOf(built, bag.of).find(({ id }) => id === bag.id);
          expect(lot && balance(lot, on)).toBeCloseTo(bag.amount, 9);
        }
      }),
      // Each run calculates the bench twice.
      { numRuns: 15 },
    );
  });

  test('is promised once: whatever is asked for, all promises and what is free add up to what there is', () => {
    const asks = fc.array(
      fc.record({
        job: fc.constantFrom('J01', 'J02'),
        material: fc.constantFrom(...materials),
        amount: fc.integer({ min: 1, max: 400 }).map((tenths) => tenths / 10),
      }),
      { maxLength: 8 },
    );
    fc.assert(
      fc.property(bags, asks, (store, asked) => {
        let now = withStore(store);
        for (const each of asked) {
          const kept = keepStock(now, { job: each.job, goods: each.material, amount: each.amount, on });
          expect(kept.ok).toBe(each.amount <= standingLoose(now, each.material) + 1e-9);
          if (kept.ok) now = applyChange(now, kept.value);
        }
        for (const material of materials) {
          const { lots } = stock(now, material, { asked: on });
          const promised = lots.reduce((sum, { kept, loose }) => sum + loose + sumOf(kept), 0);
          expect(promised).toBeCloseTo(
            amountOf(store, ({ of }) => of === material),
            6,
          );
        }
      }),
      { numRuns: 200 },
    );
  });
});

function withStore(store: readonly Bag[]): Records {
  return withBags(emptyStore(library), store);
}

/** Kept for nobody and not past its best: goods in quarantine can be kept for a job. */
function standingLoose(records: Records, material: string): number {
  return stock(records, material, { asked: on })
    .lots.filter(({ lot }) => (lot.came.bestBefore ?? on) >= on)
    .reduce((sum, { loose }) => sum + loose, 0);
}

/** Whether a job may use a bag on the day: kept for it or for no job, out of quarantine, not past its best. */
function mayServe({ job: keptFor, until, bestBefore }: Bag, job: string): boolean {
  return (keptFor === undefined || keptFor === job) && until === undefined && bestBefore === undefined;
}

function amountOf(all: readonly Bag[], of: (bag: Bag) => boolean): number {
  return all.filter(of).reduce((sum, { amount }) => sum + amount, 0);
}

function sumOf(amounts: ReadonlyMap<string, number>): number {
  return [...amounts.values()].reduce((sum, each) => sum + each, 0);
}
