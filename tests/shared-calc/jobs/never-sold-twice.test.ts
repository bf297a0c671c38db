import { derive } from '#shared-calc/derive/derived.ts';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { takeFromStore } from '#shared-calc/acts/build-job.ts';
import { workedJob } from '#tests/worked-job.ts';
import { reserveStock } from '#shared-calc/jobs/reserve-stock.ts';
import { applyChange } from '#shared-calc/records/change.ts';
import type { Records, StockEntry } from '#shared-calc/records/records.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';
import { libraryJob, valueOf } from './demo-jobs.ts';

const on = DEMO_DAY;
const library = libraryJob();
const materials = ['M01', 'M05', 'M07'] as const;

/** Bags of three materials, some reserved for the library's job or another, some in quarantine or past their best. */
const bags: fc.Arbitrary<readonly StockEntry[]> = fc
  .array(
    fc.record({
      material: fc.constantFrom(...materials),
      tenths: fc.integer({ min: 1, max: 300 }),
      sealed: fc.boolean(),
      reservedFor: fc.constantFrom(undefined, 'J01', 'J02'),
      held: fc.constantFrom('no', 'quarantine', 'past'),
    }),
    { maxLength: 10 },
  )
  .map((drawn) =>
    drawn.map(({ material, tenths, sealed, reservedFor, held }, at) => ({
      id: `K${at}`,
      material,
      amount: tenths / 10,
      sealed,
      note: '',
      ...(reservedFor !== undefined && { reservedFor }),
      ...(held === 'quarantine' && { quarantineUntil: '2027-12-01' }),
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
          const mayGive = amountOf(store, (bag) => bag.material === material && mayServe(bag, 'J02'));
          const onHand = run.materials.find((need) => need.material === material)?.onHand ?? 0;
          expect(onHand).toBeCloseTo(mayGive, 6);
          const before = amountOf(store, (bag) => bag.material === material);
          const after = amountOf(built.stockEntry.values(), (bag) => bag.material === material);
          expect(before - after).toBeCloseTo(Math.min(uses.get(material) ?? 0, mayGive), 6);
        }
        const forOthers = (entries: Iterable<StockEntry>) => [...entries].filter((bag) => !mayServe(bag, 'J02'));
        expect(forOthers(built.stockEntry.values())).toEqual(forOthers(store));
        expect([...built.stockEntry.values()].every((bag) => bag.amount > 0)).toBe(true);
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
          const free = amountOf(
            now.stockEntry.values(),
            (bag) => bag.material === each.material && bag.reservedFor === undefined && mayServe(bag, each.job),
          );
          const reserved = reserveStock(now, { ...each, on });
          expect(reserved.ok).toBe(each.amount <= free + 1e-9);
          if (reserved.ok) now = applyChange(now, reserved.value);
        }
        for (const material of materials) {
          const of = (bag: StockEntry) => bag.material === material;
          expect(amountOf(now.stockEntry.values(), of)).toBeCloseTo(amountOf(store, of), 6);
        }
      }),
      { numRuns: 200 },
    );
  });
});

function withStore(store: readonly StockEntry[]): Records {
  return { ...library, stockEntry: new Map(store.map((bag) => [bag.id, bag])) };
}

/** Whether a job may use a bag on the day: reserved for it or for no job, out of quarantine, not past its best. */
function mayServe({ reservedFor, quarantineUntil, bestBefore }: StockEntry, job: string): boolean {
  return (
    (reservedFor === undefined || reservedFor === job) && quarantineUntil === undefined && bestBefore === undefined
  );
}

function amountOf(entries: Iterable<StockEntry>, of: (bag: StockEntry) => boolean): number {
  return [...entries].filter(of).reduce((sum, { amount }) => sum + amount, 0);
}
