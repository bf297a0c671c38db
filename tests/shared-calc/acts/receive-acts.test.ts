import { describe, expect, test } from 'vitest';
import { balance, kept, lotsOf, stock } from '#shared-calc/buy/ledger.ts';
import { orderStanding } from '#shared-calc/buy/order-standing.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import { placementOf } from '#shared-calc/derive/placement.ts';
import type { Order, Records } from '#shared-calc/records/records.ts';
import { DEMO_DAY, demoRecords } from '#tests/demo-bench.ts';
import { jobOf, libraryJob, valueOf } from '#tests/shared-calc/jobs/demo-jobs.ts';
import { done, refused } from './do-act.ts';

/** Two bags of clay for the store, and the store's own 7 L. */
const clay = done(demoRecords(), 'newOrder', {
  supplier: 'S-hollin',
  packs: [{ pack: 'M01-45', count: 2 }],
  note: '',
}).records;

const paid = done(libraryJob({ handover: '2027-05-26' }), 'recordDeposit', {
  job: 'J02',
  coins: 65_000,
  on: DEMO_DAY,
}).records;
const ordered = done(paid, 'placeOrders', { jobs: ['J02'], note: '' }).records;

function orderTo(records: Records, supplier: string): Order {
  const order = [...records.order.values()].find((each) => each.supplier === supplier);
  if (!order) throw new Error(`no order to ${supplier}`);
  return order;
}

function receive(records: Records, supplier: string, more: object = {}): Records {
  return done(records, 'receiveOrder', { order: orderTo(records, supplier).id, note: '', ...more }).records;
}

describe('receiveOrder', () => {
  test('a part is a lot of its own, at the price paid; the rest stays on order', () => {
    const came = done(clay, 'receiveOrder', {
      order: 'O-0001',
      lines: [{ n: 1, count: 1, eachCoins: 3200 }],
      on: '2027-03-12',
      bestBefore: '2029-01-01',
      note: '',
    }).records;
    const lot = lotsOf(came, 'M01').at(-1);
    expect(lot?.came).toMatchObject({ order: 'O-0001', line: 1, amount: 45, coins: 3200, bestBefore: '2029-01-01' });
    expect(stock(came, 'M01', { asked: '2027-03-11' }).onHand).toBe(7);
    expect(stock(came, 'M01', { asked: '2027-03-12' })).toMatchObject({ onHand: 52, onOrder: 45 });
  });

  test('its state is open, part in, in or closed, worked from what came', () => {
    const state = (records: Records, on = DEMO_DAY) => orderStanding(records, orderTo(records, 'S-hollin'), on);
    const part = receive(clay, 'S-hollin', { lines: [{ n: 1, count: 1 }] });
    const closed = done(part, 'closeOrder', { order: 'O-0001' }).records;
    expect([clay, part, receive(part, 'S-hollin'), closed].map((each) => state(each).state)).toEqual([
      'open',
      'part in',
      'in',
      'closed',
    ]);
    expect([state(clay, '2027-03-11').lateDays, state(clay, '2027-03-14').lateDays]).toEqual([0, 3]);
    expect(state(receive(clay, 'S-hollin'), '2027-05-01').lateDays).toBe(0);
  });

  test('what was ordered for a job is kept for it, not what was ordered over its need', () => {
    const came = receive(ordered, 'S-hollin');
    const lot = lotsOf(came, 'M01').at(-1);
    expect(lot && [balance(lot, DEMO_DAY), kept(lot, 'J02', DEMO_DAY)]).toEqual([10, expect.closeTo(2.822, 3)]);
  });

  test('of too few packs the job that uses them first has its share first', () => {
    const two = done(paid, 'copyJob', { job: 'J02' }).records;
    const dated = done(two, 'writeJob', { job: 'J03', fields: { handover: '2027-04-30' } }).records;
    const both = done(dated, 'placeOrders', { jobs: ['J02', 'J03'], suppliers: ['S-ternfield'], note: '' }).records;
    const lamps = orderTo(both, 'S-ternfield').lines.find(({ of }) => of === 'M27-600');
    const some = receive(both, 'S-ternfield', { lines: [{ n: lamps?.n, count: 2 }] });
    const lot = lotsOf(some, 'M27-600').at(-1);
    expect(lot && [kept(lot, 'J03', DEMO_DAY), kept(lot, 'J02', DEMO_DAY)]).toEqual([2, 0]);
  });

  test('cut panes come in, are kept for their job, and leave when it is built', () => {
    const came = receive(ordered, 'S-greavel');
    expect(stock(came, 'M25b', { asked: DEMO_DAY }).kept.get('J02')).toBeCloseTo(0.249_546, 9);
    expect(valueOf(placementOf(derive(came, DEMO_DAY), ['J02'])).drafts).toEqual([]);
    const built = done(came, 'moveJob', { job: 'J02', state: 'built', anyway: 'Friday', who: 'R-builder' }).records;
    expect(stock(built, 'M25b', { asked: DEMO_DAY }).onHand).toBe(0);
    expect(stock(built, 'M25a', { asked: DEMO_DAY }).onHand).toBe(0);
  });

  test('plants stand apart for 30 days unless a day is given, and are not bought again', () => {
    const came = receive(ordered, 'S-marlvale', { on: '2027-03-16' });
    const day = receive(ordered, 'S-marlvale', { on: '2027-03-16', until: '2027-03-20' });
    expect(lotsOf(came, 'P02')[0]?.came.until).toBe('2027-04-15');
    expect(lotsOf(day, 'P02')[0]?.came.until).toBe('2027-03-20');
    expect(valueOf(placementOf(derive(came, '2027-03-17'), ['J02'])).drafts).toEqual([]);
  });

  test('more than was still to come is taken in only with a note; both figures are said', () => {
    const more = { order: 'O-0001', lines: [{ n: 1, count: 3 }] };
    expect(refused(clay, 'receiveOrder', { ...more, note: '' })).toBe(
      'Of line 1 of O-0001, Expanded clay 8-16 mm, 3 came and 2 of 2 were still to come. With a note more is taken in.',
    );
    const came = done(clay, 'receiveOrder', { ...more, note: 'one bag for nothing' }).records;
    expect(stock(came, 'M01', { asked: DEMO_DAY })).toMatchObject({ onHand: 142, onOrder: 0 });
  });

  test.each([
    [{ lines: [{ n: 4, count: 1 }] }, 'O-0001 has no line 4: it has one line.'],
    [{ on: '2027-03-01' }, 'O-0001 was placed on 8 March 2027, after 1 March 2027.'],
    [{ on: '2027-02-30' }, 'There is no 2027-02-30 in the calendar.'],
    [{ order: 'O-0004' }, 'There is no order O-0004. Did you mean O-0001?'],
  ])('what cannot have come is refused: %j', (input, says) => {
    expect(refused(clay, 'receiveOrder', { order: 'O-0001', note: '', ...input })).toBe(says);
  });

  test('what comes after an order was closed or is all in is taken in with a note, and is free', () => {
    const closed = done(ordered, 'closeOrder', { order: orderTo(ordered, 'S-hollin').id }).records;
    const { id } = orderTo(ordered, 'S-hollin');
    const after = { order: id, lines: [{ n: 1, count: 1 }] };
    expect(refused(closed, 'receiveOrder', { ...after, note: '' })).toContain(`${id} was closed on 8 March 2027.`);
    const came = done(closed, 'receiveOrder', { ...after, note: 'it came after all' }).records;
    expect(stock(came, 'M01', { asked: DEMO_DAY }).free).toBe(10);
    expect(refused(receive(clay, 'S-hollin'), 'receiveOrder', { order: 'O-0001', note: '' })).toContain(
      'is in already',
    );
  });

  test('a job goes on with what comes: in quarantine with its plants, ready once all is in and cleared', () => {
    const suppliers = ['S-greavel', 'S-hollin', 'S-saltbarrow', 'S-ternfield'];
    const goods = suppliers.reduce((records, supplier) => receive(records, supplier), ordered);
    expect([ordered, goods].map((records) => jobOf(records, 'J02').state)).toEqual(['ordered', 'ordered']);
    const plants = receive(goods, 'S-marlvale');
    expect(jobOf(plants, 'J02').state).toBe('in quarantine');
    const cleared = receive(goods, 'S-marlvale', { until: DEMO_DAY });
    expect(jobOf(cleared, 'J02').state).toBe('ready to build');
    expect(
      jobOf(receive(done(ordered, 'moveJob', { job: 'J02', state: 'closed' }).records, 'S-hollin'), 'J02').state,
    ).toBe('closed');
  });
});
