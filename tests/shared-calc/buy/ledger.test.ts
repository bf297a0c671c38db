import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { actTable } from '#shared-calc/acts/all-acts.ts';
import type { Act } from '#shared-calc/acts/act.ts';
import { balance, kept, lotsOf, stock } from '#shared-calc/buy/ledger.ts';
import { addDays } from '#shared-calc/calendar/day.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import { applyChange } from '#shared-calc/records/change.ts';
import type { Move, Order, Records } from '#shared-calc/records/records.ts';
import { libraryJob } from '#tests/shared-calc/jobs/demo-jobs.ts';
import { emptyStore, withBags } from './lots.ts';
import { FIRST_DAY, storeAct, type AskedAct } from './random-ledger.ts';

const store = emptyStore(libraryJob());
const goods = ['M01', 'P04', 'P05', 'PG'];
const days = Array.from({ length: 45 }, (_, at) => addDays(FIRST_DAY, at));

/** What is left of these acts that are not refused, done one after the other. */
function after(acts: readonly AskedAct[], start: Records = store): Records {
  let records = start;
  for (const { name, input } of acts) {
    const change = (actTable[name] as Act).run(derive(records, FIRST_DAY), input);
    if (change.ok) records = applyChange(records, change.value);
  }
  return records;
}

const manyActs = fc.array(storeAct, { minLength: 1, maxLength: 14 });

describe('stock', () => {
  test('on hand is what came and was counted less what was used, lost and sold, at every day, and nothing is below 0', () => {
    fc.assert(
      fc.property(manyActs, (acts) => {
        const records = after(acts);
        for (const day of days) {
          for (const of of goods.filter((each) => each !== 'PG')) {
            const moves = [...records.move.values()].filter((move) => move.of === of && move.on <= day);
            const moved = moves.filter(({ what }) => what !== 'kept').reduce((sum, { amount }) => sum + amount, 0);
            const now = stock(records, of, { asked: day });
            expect(now.onHand).toBeCloseTo(moved, 9);
            expect(lotsOf(records, of).every((lot) => balance(lot, day) >= 0)).toBe(true);
          }
        }
      }),
      { numRuns: 60 },
    );
  });

  test('what is free, kept and unfit adds up to what is on hand, whatever day it is used on', () => {
    fc.assert(
      fc.property(manyActs, fc.nat(40), fc.nat(40), (acts, from, wait) => {
        const records = after(acts);
        const asked = addDays(FIRST_DAY, from);
        for (const of of goods) {
          const now = stock(records, of, { asked, use: addDays(asked, wait) });
          const forJobs = [...now.kept.values()].reduce((sum, amount) => sum + amount, 0);
          const unfit = now.lots.filter(({ usable }) => !usable).reduce((sum, { amount }) => sum + amount, 0);
          expect(now.free + forJobs + unfit).toBeCloseTo(now.onHand, 9);
          expect([now.free, now.quarantined, ...now.kept.values()].every((amount) => amount >= 0)).toBe(true);
        }
      }),
      { numRuns: 80 },
    );
  });

  test('the day of a move matters, not the order in which moves were written', () => {
    fc.assert(
      fc.property(
        manyActs.chain((acts) => {
          const moves = [...after(acts).move.values()];
          return fc.shuffledSubarray(moves, { minLength: moves.length }).map((shuffled) => ({ moves, shuffled }));
        }),
        ({ moves, shuffled }) => {
          const table = (list: readonly Move[]) => ({ ...store, move: new Map(list.map((move) => [move.id, move])) });
          for (const asked of [FIRST_DAY, addDays(FIRST_DAY, 10), addDays(FIRST_DAY, 20)])
            for (const of of goods) {
              const [one, other] = [stock(table(moves), of, { asked }), stock(table(shuffled), of, { asked })];
              expect(other.onHand).toBeCloseTo(one.onHand, 9);
              expect(other.free).toBeCloseTo(one.free, 9);
              expect(other.kept).toEqual(one.kept);
            }
        },
      ),
      { numRuns: 60 },
    );
  });

  test('plants that are kept and stand apart are used after their quarantine, not before', () => {
    const records = withBags(store, [{ of: 'P04', amount: 6, until: '2027-03-31', job: 'J02' }]);
    const use = (day: string) => [...stock(records, 'PG', { asked: FIRST_DAY, use: day }).kept];
    expect([use('2027-03-30'), use('2027-03-31')]).toEqual([[], [['J02', 6]]]);
  });

  test('a count below what is kept leaves the first job its own', () => {
    const records = after(
      [
        { name: 'keepStock', input: { job: 'J01', of: 'M01', amount: 4, on: FIRST_DAY } },
        { name: 'keepStock', input: { job: 'J02', of: 'M01', amount: 5, on: '2027-03-02' } },
        { name: 'countStock', input: { of: 'M01', amount: 6, note: 'mice', on: '2027-03-03' } },
      ],
      withBags(store, [{ of: 'M01', amount: 10 }]),
    );
    const [lot] = lotsOf(records, 'M01');
    if (!lot) throw new Error('no lot');
    expect(['J01', 'J02'].map((job) => kept(lot, job, '2027-03-03'))).toEqual([4, 2]);
  });
});

describe('what is ordered', () => {
  const order: Order = {
    id: 'O-0001',
    supplier: 'S-hollin',
    on: '2027-03-01',
    lines: [
      {
        n: 1,
        of: 'M01',
        label: 'Expanded clay',
        amount: 45,
        unit: 'L',
        count: 2,
        askedCoins: 3150,
        due: '2027-03-05',
        for: [{ job: 'J02', amount: 10 }],
      },
      {
        n: 2,
        of: 'P04',
        label: 'Pilea depressa',
        amount: 1,
        unit: 'each',
        count: 6,
        askedCoins: 310,
        due: '2027-03-05',
        for: [{ job: 'J02', amount: 6 }],
      },
    ],
    carriageCoins: 750,
    note: '',
  };
  const ordered = withBags({ ...store, order: new Map([[order.id, order]]) }, [{ of: 'M01', amount: 7 }]);
  const came: readonly Move[] = [
    {
      id: 'K-M01-2',
      lot: 'K-M01-2',
      of: 'M01',
      on: '2027-03-05',
      what: 'in',
      amount: 45,
      order: 'O-0001',
      line: 1,
      coins: 3200,
      note: '',
    },
    {
      id: 'M-1',
      lot: 'K-M01-2',
      of: 'M01',
      on: '2027-03-05',
      what: 'kept',
      amount: 10,
      order: 'O-0001',
      line: 1,
      job: 'J02',
      note: '',
    },
  ];
  const partly: Records = {
    ...ordered,
    move: new Map([...ordered.move, ...came.map((move) => [move.id, move] as const)]),
  };

  test('7 L lie there on 4 March, 52 on 5 March with one of two bags in, and 45 are on order', () => {
    const on = (records: Records, asked: string) => {
      const { onHand, onOrder } = stock(records, 'M01', { asked });
      return [onHand, onOrder];
    };
    expect([on(ordered, '2027-02-28'), on(partly, '2027-03-04'), on(partly, '2027-03-05')]).toEqual([
      [7, 0],
      [7, 90],
      [52, 45],
    ]);
  });

  test('what comes for a job is its own until it is in; the rest comes for whoever needs it', () => {
    const coming = (records: Records) => {
      const now = stock(records, 'M01', { asked: '2027-03-05', use: '2027-03-05' });
      return [now.coming.get('J02') ?? 0, now.comingFree, now.kept.get('J02') ?? 0];
    };
    expect([coming(ordered), coming(partly)]).toEqual([
      [10, 80, 0],
      [0, 45, 10],
    ]);
  });

  test('plants come with their quarantine: 30 days after they are due', () => {
    const coming = (use: string) => stock(ordered, 'PG', { asked: '2027-03-02', use }).coming.get('J02') ?? 0;
    expect([coming('2027-04-03'), coming('2027-04-04')]).toEqual([0, 6]);
  });

  test('ordered is what came in, what comes and what was closed', () => {
    const closed: Records = { ...partly, order: new Map([[order.id, { ...order, closedOn: '2027-03-09' }]]) };
    const onOrder = ['2027-03-08', '2027-03-09'].map((asked) => stock(closed, 'M01', { asked }).onOrder);
    expect(onOrder).toEqual([45, 0]);
  });
});
