import { describe, expect, test } from 'vitest';
import { receive } from '#shared-calc/acts/receive.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import { expectedGoods } from '#shared-calc/derive/expected-goods.ts';
import { choosePacks } from '#shared-calc/jobs/pack-choices.ts';
import { moveJob } from '#shared-calc/jobs/move-job.ts';
import { recordDeposit } from '#shared-calc/jobs/record-deposit.ts';
import { applyChange } from '#shared-calc/records/change.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { after, libraryJob, valueOf } from '#tests/shared-calc/jobs/demo-jobs.ts';

const on = '2027-03-10';

function orderedLibrary(): Records {
  const records = libraryJob();
  const paid = after(records, recordDeposit(records, { job: 'J02', coins: 65_000, on }));
  return after(paid, moveJob(paid, 'J02', 'ordered'));
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
    const counts = order.packs.map(({ count }) => count);
    const then = applyChange(records, receive(records, { order, counts, on, quarantineDays: 30 }));
    expect([clayOf(then), then.packChoice.size]).toEqual([[], 0]);
  });
});

describe('receive', () => {
  test('what came lies in the Store, plants in quarantine, and is expected no more', () => {
    const records = orderedLibrary();
    const order = valueOf(expectedGoods(derive(records, on))).find(({ supplier }) => supplier === 'S-marlvale');
    if (!order) throw new Error('no plants ordered');
    const counts = order.packs.map(({ count }) => count);
    const then = applyChange(records, receive(records, { order, counts, on, quarantineDays: 30 }));
    expect([...then.stockEntry.values()].filter(({ material }) => material === 'PG')).toEqual([
      {
        id: 'K-PG',
        material: 'PG',
        amount: 4,
        sealed: true,
        note: '4 x 1, Marlvale Plant House',
        quarantineUntil: '2027-04-09',
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
    const none = receive(records, { order, counts: order.packs.map(() => 0), on, quarantineDays: 30 });
    expect(none.added).toEqual([]);
  });
});
