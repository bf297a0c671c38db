import fc from 'fast-check';
import { addDays, type Day } from '#shared-calc/calendar/day.ts';
import type { ActName, ActInputs } from '#shared-calc/acts/all-acts.ts';

export const FIRST_DAY = '2027-03-01';

export interface AskedAct<N extends ActName = ActName> {
  readonly name: N;
  readonly input: ActInputs[N];
}

const goods = fc.constantFrom('M01', 'P04', 'P05', 'PG');
const tenths = fc.integer({ min: 1, max: 200 }).map((count) => count / 10);
const job = fc.constantFrom('J01', 'J02');
const day: fc.Arbitrary<Day> = fc.nat(20).map((days) => addDays(FIRST_DAY, days));
const later = fc.option(
  fc.nat(40).map((days) => addDays(FIRST_DAY, days)),
  { nil: undefined },
);

/** Any act of the Store, on any of twenty days, in any order of them. */
export const storeAct: fc.Arbitrary<AskedAct> = fc.oneof(
  {
    weight: 3,
    arbitrary: fc
      .record({ of: goods, amount: tenths, on: day, until: later, bestBefore: later, sealed: fc.boolean() })
      .map((input) => asked('putIn', { ...input, note: '' })),
  },
  fc
    .record({ of: goods, amount: tenths, on: day, job: fc.option(job, { nil: undefined }) })
    .map((input) => asked('useStock', { ...input, note: '' })),
  fc.record({ of: goods, amount: tenths, on: day }).map((input) => asked('wasteStock', { ...input, note: 'torn' })),
  fc
    .record({ of: goods, amount: tenths, on: day })
    .map((input) => asked('sellStock', { ...input, coins: 100, note: '' })),
  fc.record({ of: goods, amount: tenths, on: day }).map((input) => asked('countStock', { ...input, note: 'counted' })),
  fc
    .record({ of: goods, amount: tenths, on: day, job, back: fc.boolean() })
    .map(({ back, amount, ...input }) => asked('keepStock', { ...input, amount: back ? -amount : amount })),
);

function asked<N extends ActName>(name: N, input: ActInputs[N]): AskedAct {
  return { name, input } as AskedAct;
}
