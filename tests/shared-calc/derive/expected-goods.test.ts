import { describe, expect, test } from 'vitest';
import { receive } from '#shared-calc/acts/store-acts.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import { expectedGoods, type ExpectedOrder } from '#shared-calc/derive/expected-goods.ts';
import { choosePacks } from '#shared-calc/jobs/pack-choices.ts';
import { moveJob } from '#shared-calc/jobs/move-job.ts';
import { recordDeposit } from '#shared-calc/jobs/record-deposit.ts';
import { applyChange } from '#shared-calc/records/change.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { after, faultOf, libraryJob, valueOf } from '#tests/shared-calc/jobs/demo-jobs.ts';

const on = '2027-03-10';

function orderedLibrary(): Records {
  const records = libraryJob();
  const paid = after(records, recordDeposit(records, { job: 'J02', coins: 65_000, on }));
  return after(paid, moveJob(paid, 'J02', 'ordered'));
}

/** The order as delivered: every pack, unless other counts are given. */
function came(records: Records, { supplier, packs }: ExpectedOrder, counts = packs.map(({ count }) => count)) {
  const received = packs.map(({ material, amount }, at) => ({ material, amount, count: counts[at] ?? 0 }));
  return receive.run(derive(records, on), { supplier, packs: received, quarantineDays: 30 });
}

describe('expectedGoods', () => {
  test('nothing is expected before a job is ordered', () => {
    expect(expectedGoods(derive(libraryJob(), on))).toEqual({ ok: true, value: [] });
  });

  test('an ordered job waits for its packs, supplier by supplier', () => {
    const orders = valueOf(expectedGoods(derive(orderedLibrary(), on)));
    const hollin = orders.find(({ supplier }) => supplier === 'S-hollin');
    expect(hollin?.packs.find(({ material }) => material === 'M01')).toEqual({
      material: 'M01',
      label: 'Expanded clay 8-16 mm',
      unit: 'L',
      amount: 10,
      count: 1,
      isPlant: false,
    });
  });
});

describe('packs chosen by hand', () => {
  const ordered = orderedLibrary();
  const records = applyChange(
    ordered,
    choosePacks(ordered, { jobs: ['J02'], material: 'M01', counts: new Map([['M01-45', 1]]) }),
  );
  const clayOf = (book: Records) =>
    valueOf(expectedGoods(derive(book, on)))
      .flatMap(({ packs }) => packs)
      .filter(({ material }) => material === 'M01')
      .map(({ amount, count }) => [amount, count]);

  test('are what is expected, until they come in', () => {
    expect([clayOf(ordered), clayOf(records)]).toEqual([[[10, 1]], [[45, 1]]]);
    const order = valueOf(expectedGoods(derive(records, on))).find(({ supplier }) => supplier === 'S-hollin');
    if (!order) throw new Error('no media ordered');
    const then = after(records, came(records, order));
    expect([clayOf(then), then.packChoice.size]).toEqual([[], 0]);
  });
});

describe('receive', () => {
  test('what came lies in the Store, plants in quarantine, and is expected no more', () => {
    const records = orderedLibrary();
    const order = valueOf(expectedGoods(derive(records, on))).find(({ supplier }) => supplier === 'S-marlvale');
    if (!order) throw new Error('no plants ordered');
    const then = after(records, came(records, order));
    expect([...then.move.values()].filter(({ of }) => of === 'PG')).toEqual([
      {
        id: 'K-PG',
        lot: 'K-PG',
        of: 'PG',
        on,
        what: 'in',
        amount: 4,
        sealed: true,
        note: '4 x 1, Marlvale Plant House',
        until: '2027-04-09',
      },
    ]);
    expect(valueOf(expectedGoods(derive(then, '2027-04-09'))).some(({ supplier }) => supplier === 'S-marlvale')).toBe(
      false,
    );
  });

  test('packs of which none came are not put in', () => {
    const records = orderedLibrary();
    const [order] = valueOf(expectedGoods(derive(records, on)));
    if (!order) throw new Error('nothing ordered');
    const first = valueOf(came(records, order, [1]));
    expect(first.added.map(({ record }) => record.id)).toEqual([`K-${order.packs[0]?.material}`]);
    expect(faultOf(came(records, order, []))).toEqual({ kind: 'nothing-came' });
  });
});
