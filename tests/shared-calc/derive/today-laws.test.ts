import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { did } from '#shared-calc/acts/did-act.ts';
import { addDays } from '#shared-calc/calendar/day.ts';
import { derive, type Derived } from '#shared-calc/derive/derived.ts';
import { dueOf } from '#shared-calc/derive/today.ts';
import { recordDeposit } from '#shared-calc/jobs/record-deposit.ts';
import { after, libraryJob } from '#tests/shared-calc/jobs/demo-jobs.ts';

const start = libraryJob({ handover: '2027-04-28' });
const paid = after(start, recordDeposit(start, { job: 'J02', coins: 64_500, on: '2027-03-08' }));

function keysOf(derived: Derived): readonly string[] {
  return dueOf(derived).map(({ key }) => key);
}

const aMorning = fc.nat(60).map((days) => addDays('2027-03-08', days));

/** Law 27. */
describe('what is to be done', () => {
  test('names every step of a plan that is not over', () => {
    fc.assert(
      fc.property(aMorning, (on) => {
        const derived = derive(paid, on);
        const plan = derived.job('J02')?.plan();
        const open = plan?.ok ? plan.value.plan.steps.filter(({ state }) => state === 'open') : [];
        const wanted = open.map(({ step, orderBy }) => (orderBy === undefined ? `J02 ${step}` : `J02 order ${step}`));
        expect(open.length).toBeGreaterThan(5);
        expect(keysOf(derived)).toEqual(expect.arrayContaining(wanted));
      }),
      { numRuns: 15 },
    );
  });

  test('loses the item whose fact is written, and no other', () => {
    fc.assert(
      fc.property(aMorning, fc.constantFrom('panel', 'leaves'), (on, step) => {
        const derived = derive(paid, on);
        const before = keysOf(derived);
        const changed = derived.update(after(paid, did.run(derived, { job: 'J02', step, ends: true, on })));
        expect(keysOf(changed)).toEqual(expect.arrayContaining(before.filter((key) => key !== `J02 ${step}`)));
        expect([before.includes(`J02 ${step}`), keysOf(changed).includes(`J02 ${step}`)]).toEqual([true, false]);
      }),
      { numRuns: 15 },
    );
  });
});
