import { derive } from '#shared-calc/derive/derived.ts';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { placeOrders } from '#shared-calc/acts/order-acts.ts';
import { receiveOrder } from '#shared-calc/acts/receive-acts.ts';
import { buildJob } from '#shared-calc/acts/build-job.ts';
import { copyJob } from '#shared-calc/jobs/copy-job.ts';
import { moveJob } from '#shared-calc/jobs/move-job.ts';
import { newJob } from '#shared-calc/jobs/new-job.ts';
import { setNextAct } from '#shared-calc/jobs/next-act.ts';
import { recordDeposit } from '#shared-calc/jobs/record-deposit.ts';
import { keepStock, releaseStock } from '#shared-calc/jobs/keep-stock.ts';
import { setSizes } from '#shared-calc/jobs/set-sizes.ts';
import { setValues } from '#shared-calc/jobs/set-values.ts';
import { surveyJob } from '#shared-calc/jobs/survey-job.ts';
import { applyChange, invertChange, type Change } from '#shared-calc/records/change.ts';
import { jobStates } from '#shared-calc/fields/job.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { ok, type Result } from '#shared-calc/result.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';
import { libraryJob } from './demo-jobs.ts';

type Act = (records: Records) => Result<Change, unknown>;

const tank = fc.constantFrom('T01', 'T03', 'T05', 'T07');
const size = fc.record({ tank, count: fc.integer({ min: 1, max: 3 }) });
const amount = fc.integer({ min: 1, max: 8 });

/** Any act on J02 or outside it. */
const anyAct: fc.Arbitrary<Act> = fc.oneof(
  fc.array(size, { maxLength: 4 }).map(
    (sizes): Act =>
      (records) =>
        setSizes(records, 'J02', sizes),
  ),
  fc.constantFrom('20 mm', '', undefined).map(
    (text): Act =>
      (records) =>
        setValues(records, { job: 'J02', writings: [{ line: 'litter', text }], by: 'client' }),
  ),
  fc.constantFrom(...jobStates).map(
    (state): Act =>
      (records) =>
        moveJob(records, 'J02', state),
  ),
  amount.map(
    (coins): Act =>
      (records) =>
        recordDeposit(records, { job: 'J02', coins, on: DEMO_DAY }),
  ),
  fc.constant<Act>((records) => changeOf(copyJob(records, 'J02', { on: DEMO_DAY }))),
  fc.array(size, { maxLength: 2 }).map(
    (sizes): Act =>
      (records) =>
        changeOf(newJob(records, { title: 'Lobby', recipe: 'H1', sizes, writings: [], by: 'us', on: DEMO_DAY })),
  ),
  fc.constant<Act>((records) =>
    surveyJob(records, { job: 'J02', figures: [{ line: 'shelf_rating', text: '80 kg' }], access: 'One step' }),
  ),
  fc.constant<Act>((records) => setNextAct(records, 'J02', 'Ring them', DEMO_DAY)),
  amount.map(
    (each): Act =>
      (records) =>
        keepStock(records, { job: 'J02', goods: 'M05', amount: each, on: DEMO_DAY }),
  ),
  fc.constant<Act>((records) => ok(releaseStock(records, 'J02', DEMO_DAY))),
  amount.map(
    (count): Act =>
      (records) =>
        receiveOrder.run(derive(records, DEMO_DAY), { order: 'O-0001', lines: [{ n: 1, count }], note: 'as counted' }),
  ),
  fc.constant<Act>((records) => placeOrders.run(derive(records, DEMO_DAY), { jobs: ['J02'], note: '' })),
  fc.constant<Act>((records) => changeOf(buildJob(derive(records, DEMO_DAY), 'J02'))),
);

describe('acts on a job', () => {
  test('undoing them one after the other brings every record back', () => {
    fc.assert(
      fc.property(fc.array(anyAct, { minLength: 1, maxLength: 6 }), (acts) => {
        const start = libraryJob();
        const done: Change[] = [];
        let now = start;
        for (const act of acts) {
          const change = act(now);
          if (!change.ok) continue;
          done.push(change.value);
          now = applyChange(now, change.value);
        }
        for (const change of done.toReversed()) now = applyChange(now, invertChange(change));
        expect(sorted(now)).toEqual(sorted(start));
      }),
      { numRuns: 30 },
    );
  });
});

function changeOf<F>(made: Result<{ readonly change: Change }, F>): Result<Change, F> {
  return made.ok ? ok(made.value.change) : made;
}

/** Records by kind and id, in any order. */
function sorted(records: Records): unknown {
  return Object.fromEntries(
    Object.entries(records).map(([kind, table]) => [
      kind,
      [...table].toSorted(([one], [other]) => (one < other ? -1 : 1)),
    ]),
  );
}
