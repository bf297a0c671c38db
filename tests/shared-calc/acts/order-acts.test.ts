import { describe, expect, test } from 'vitest';
import { balance, lotsOf, stock } from '#shared-calc/buy/ledger.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import { placementOf } from '#shared-calc/derive/placement.ts';
import type { Order, Records } from '#shared-calc/records/records.ts';
import { DEMO_DAY, demoRecords } from '#tests/demo-bench.ts';
import { jobOf, libraryJob, valueOf, withRecords } from '#tests/shared-calc/jobs/demo-jobs.ts';
import { done, refused } from './do-act.ts';

const paid = done(libraryJob(), 'recordDeposit', { job: 'J02', coins: 65_000, on: DEMO_DAY }).records;
const place = (records: Records, more: object = {}) =>
  done(records, 'placeOrders', { jobs: ['J02'], note: '', ...more }).records;

function orderTo(records: Records, supplier: string): Order | undefined {
  return [...records.order.values()].find((order) => order.supplier === supplier);
}

function linesTo(records: Records, supplier: string) {
  return orderTo(records, supplier)?.lines.map(({ of, amount, count, askedCoins }) => [of, amount, count, askedCoins]);
}

describe('placeOrders', () => {
  test('one order a supplier, numbered from O-0001, each with its carriage', () => {
    const orders = [...place(paid).order.values()];
    expect(orders.map(({ id, supplier, carriageCoins }) => [id, supplier, carriageCoins])).toEqual([
      ['O-0001', 'S-greavel', 1200],
      ['O-0002', 'S-hollin', 750],
      ['O-0003', 'S-saltbarrow', 0],
      ['O-0004', 'S-marlvale', 950],
      ['O-0005', 'S-ternfield', 0],
    ]);
  });

  test('panes are lines with their cut, for their job; cutting them is a line beside', () => {
    const order = orderTo(place(paid), 'S-greavel');
    expect(order?.lines.map(({ of, count, cut, for: jobs }) => [of, count, cut, jobs])).toEqual([
      ['T05', 1, undefined, [{ job: 'J02', amount: 1 }]],
      ['M25a', 1, undefined, [{ job: 'J02', amount: 1 }]],
      ['M25b', 1, { lengthMm: 597, depthMm: 418, glassMm: 4 }, [{ job: 'J02', amount: 0.249_546 }]],
    ]);
  });

  test('plants are lines by name at their own price', () => {
    expect(linesTo(place(paid), 'S-marlvale')).toContainEqual(['P02', 1, 3, 820]);
  });

  test('each line is due by the lead and the delivery days of who sends it', () => {
    const due = (supplier: string) => orderTo(place(paid), supplier)?.lines.map((line) => [line.of, line.due]);
    expect(due('S-greavel')).toEqual([
      ['T05', '2027-03-22'],
      ['M25a', '2027-03-16'],
      ['M25b', '2027-03-16'],
    ]);
    expect(due('S-marlvale')?.[0]).toEqual(['P04', '2027-03-16']);
  });

  test('an order placed on a closed day goes out on the next open one', () => {
    const sunday = orderTo(place(paid, { on: '2027-03-14' }), 'S-hollin');
    const monday = orderTo(place(paid, { on: '2027-03-15' }), 'S-hollin');
    expect([sunday?.on, sunday?.lines.map(({ due }) => due)]).toEqual([
      '2027-03-14',
      monday?.lines.map(({ due }) => due),
    ]);
  });

  test('what the store gives is kept for the job in the same change, and the job is ordered', () => {
    const ordered = place(paid);
    const kept = stock(ordered, 'M01', { asked: DEMO_DAY });
    expect([kept.free, kept.kept.get('J02')]).toEqual([0, 7]);
    expect(jobOf(ordered, 'J02').state).toBe('ordered');
  });

  test('placed again it buys nothing: no order, and the store gives nothing more', () => {
    const once = place(paid);
    const twice = place(once);
    expect([twice.order.size, twice.move.size]).toEqual([once.order.size, once.move.size]);
  });

  test('only the suppliers that are asked for get an order', () => {
    const some = place(paid, { suppliers: ['S-hollin'] });
    expect([...some.order.values()].map(({ supplier }) => supplier)).toEqual(['S-hollin']);
    const rest = place(some);
    expect([...rest.order.values()].map(({ supplier }) => supplier)).toEqual([
      'S-hollin',
      'S-greavel',
      'S-saltbarrow',
      'S-marlvale',
      'S-ternfield',
    ]);
    expect(refused(paid, 'placeOrders', { jobs: ['J02'], suppliers: ['S-nobody'], note: '' })).toBe(
      'There is no supplier S-nobody.',
    );
  });

  test('a job without its deposit is ordered for, and stays what it was', () => {
    const ordered = place(libraryJob());
    expect([ordered.order.size, jobOf(ordered, 'J02').state]).toEqual([5, 'enquiry']);
    expect(valueOf(placementOf(derive(libraryJob(), DEMO_DAY), ['J02'])).unpaid).toEqual(['J02']);
  });

  test('two tanks without a supplier are to be bought, named, and on no order', () => {
    const tank = paid.tank.get('T05');
    const { supplier: _, ...nobodys } = tank ?? {};
    const packs = [...paid.pack.values()].filter(({ material }) => material === 'T05');
    const withoutPackSupplier = packs.map(({ supplier: __, ...pack }) => pack);
    const records = withRecords(
      withRecords(paid, 'pack', withoutPackSupplier),
      'tank',
      tank ? [{ ...tank, ...nobodys, supplier: undefined }].map(({ supplier: __, ...bare }) => bare) : [],
    );
    const two = done(records, 'setCount', { job: 'J02', column: 'T05', count: 2 }).records;
    expect(valueOf(placementOf(derive(two, DEMO_DAY), ['J02'])).noSupplier).toEqual([
      { material: 'T05', label: 'Rectangle 600 × 445 × 600', unit: 'each', buy: 2, coins: 29_600 },
    ]);
    expect([...place(two).order.values()].flatMap(({ lines }) => lines.map(({ of }) => of))).not.toContain('T05');
  });

  test('what is out of season is not ordered, and said with its days', () => {
    const none = done(paid, 'countStock', { of: 'M15', amount: 0, note: '' }).records;
    const placed = (on: string) => valueOf(placementOf(derive(none, on), ['J02']));
    const [left] = placed('2027-07-01').outOfSeason;
    expect([left?.material, left?.until, left?.short.toFixed(2)]).toEqual(['M15', '2027-10-01', '107.49']);
    expect(placed('2027-07-01').drafts.flatMap(({ lines }) => lines.map(({ of }) => of))).not.toContain('M15');
    expect(placed('2027-03-08').drafts.flatMap(({ lines }) => lines.map(({ of }) => of))).toContain('M15');
  });

  test('a one-off line with a supplier is goods like any other, one without is not', () => {
    const line = { job: 'J02', group: 'hardscape', by: 'us' as const };
    const stand = {
      ...line,
      id: 'QL-stand',
      label: 'Oak stand',
      costCoins: 6400,
      supplier: 'S-saltbarrow',
      leadDays: 9,
    };
    const carrying = { ...line, id: 'QL-carry', label: 'Carrying', costCoins: 2000 };
    const ordered = place(withRecords(paid, 'quoteLine', [stand, carrying]));
    const of = orderTo(ordered, 'S-saltbarrow')?.lines.find((each) => each.of === 'QL-stand');
    expect([of?.label, of?.count, of?.askedCoins, of?.due]).toEqual(['Oak stand', 1, 6400, '2027-03-19']);
    expect([...ordered.order.values()].flatMap(({ lines }) => lines.map((each) => each.of))).not.toContain('QL-carry');
  });

  test('what is ordered for the store is promised to the job that needs it', () => {
    const stocked = done(paid, 'newOrder', { supplier: 'S-hollin', packs: [{ pack: 'M04-6', count: 2 }], note: '' });
    const ordered = place(stocked.records);
    const promised = ordered.order.get('O-0001')?.lines[0]?.for;
    expect(promised?.map(({ job, amount }) => [job, amount.toFixed(3)])).toEqual([['J02', '3.279']]);
    expect(orderTo(ordered, 'S-hollin')?.id).toBe('O-0001');
    expect([...ordered.order.values()].filter(({ supplier }) => supplier === 'S-hollin')[1]?.lines).not.toContainEqual(
      expect.objectContaining({ of: 'M04' }),
    );
  });

  test('packs chosen by hand are ordered, and the choice is spent', () => {
    const byHand = done(paid, 'choosePacks', { jobs: ['J02'], material: 'M01', counts: { 'M01-45': 1 } }).records;
    const ordered = place(byHand);
    expect(linesTo(ordered, 'S-hollin')?.[0]).toEqual(['M01', 45, 1, 3150]);
    expect(ordered.packChoice.size).toBe(0);
  });

  test('plants that came, apart or not, are not bought again: by name or as their class', () => {
    const inStore = (of: string) =>
      done(paid, 'putIn', { of, amount: 4, sealed: true, job: 'J02', until: '2027-04-07', note: '' }).records;
    const handed = (records: Records) => done(records, 'writeJob', { job: 'J02', fields: { handover: '2027-05-26' } });
    const ground = (records: Records) =>
      linesTo(place(handed(records).records), 'S-marlvale')?.filter(
        ([of]) => of === 'P04' || of === 'P06' || of === 'PG',
      );
    expect(ground(paid)).not.toEqual([]);
    expect(ground(inStore('PG'))).toEqual([]);
  });
});

describe('newOrder', () => {
  const order = (supplier: string, pack: string, count = 1) => ({ supplier, packs: [{ pack, count }], note: '' });

  test('packs for the store at the price of the day, for nobody', () => {
    const { label, records } = done(demoRecords(), 'newOrder', order('S-hollin', 'M01-10', 3));
    expect(label).toBe("O-0001 ordered from Hollin Lane Growers' Supply for the store");
    expect(records.order.get('O-0001')?.lines).toEqual([
      {
        n: 1,
        of: 'M01',
        label: 'Expanded clay 8-16 mm',
        amount: 10,
        unit: 'L',
        count: 3,
        askedCoins: 980,
        due: '2027-03-11',
        for: [],
      },
    ]);
  });

  test.each([
    [order('S-greavel', 'M01-10'), 'M01-10 is sold by S-hollin, not by S-greavel.'],
    [order('S-nobody', 'M01-10'), 'There is no supplier S-nobody.'],
    [order('S-hollin', 'M01-11'), 'There is no pack M01-11. Did you mean M01-10?'],
  ])('an order that nobody can send is refused: %j', (input, says) => {
    expect(refused(demoRecords(), 'newOrder', input)).toBe(says);
  });
});

describe('closeOrder', () => {
  const ordered = done(demoRecords(), 'newOrder', {
    supplier: 'S-hollin',
    packs: [{ pack: 'M01-45', count: 2 }],
    note: '',
  }).records;

  test('the rest is not coming, and is needed again', () => {
    const some = done(ordered, 'receiveOrder', { order: 'O-0001', lines: [{ n: 1, count: 1 }], note: '' }).records;
    const closed = done(some, 'closeOrder', { order: 'O-0001' }).records;
    const onOrder = (records: Records) => stock(records, 'M01', { asked: DEMO_DAY }).onOrder;
    expect([onOrder(ordered), onOrder(some), onOrder(closed)]).toEqual([90, 45, 0]);
    expect(lotsOf(closed, 'M01').map((lot) => balance(lot, DEMO_DAY))).toEqual([7, 45]);
  });

  test('what a job was to get of it is bought again', () => {
    const once = place(paid);
    const closed = done(once, 'closeOrder', { order: orderTo(once, 'S-hollin')?.id ?? '' }).records;
    const again = place(closed);
    expect([...again.order.values()].filter(({ supplier }) => supplier === 'S-hollin')).toHaveLength(2);
    expect(again.order.size).toBe(once.order.size + 1);
  });

  test('an order that is all in, closed already or placed later is not closed', () => {
    const all = done(ordered, 'receiveOrder', { order: 'O-0001', note: '' }).records;
    const closed = done(ordered, 'closeOrder', { order: 'O-0001' }).records;
    expect(refused(all, 'closeOrder', { order: 'O-0001' })).toContain('All of O-0001 is in already.');
    expect(refused(closed, 'closeOrder', { order: 'O-0001' })).toContain('O-0001 was closed on 8 March 2027.');
    expect(refused(ordered, 'closeOrder', { order: 'O-0001', on: '2027-03-01' })).toBe(
      'O-0001 was placed on 8 March 2027, after 1 March 2027.',
    );
    expect(refused(ordered, 'closeOrder', { order: 'O-0007' })).toContain('There is no order O-0007.');
  });
});
