import { derive } from '#shared-calc/derive/derived.ts';
import { describe, expect, test } from 'vitest';
import { buildJob, takeFromStore } from '#shared-calc/acts/build-job.ts';
import { packsBought, receiveOrder } from '#shared-calc/jobs/receive-order.ts';
import { recordDeposit } from '#shared-calc/jobs/record-deposit.ts';
import { releaseStock, reserveStock } from '#shared-calc/jobs/reserve-stock.ts';
import { storePieces } from '#shared-calc/jobs/store-pieces.ts';
import { applyChange } from '#shared-calc/records/change.ts';
import type { Records, StockEntry } from '#shared-calc/records/records.ts';
import { sayJobFault } from '#shared-calc/words/say-job-fault.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';
import { after, faultOf, jobOf, libraryJob, valueOf } from './demo-jobs.ts';

const on = DEMO_DAY;
const entry = (id: string, more: Partial<StockEntry>): StockEntry => ({
  id,
  material: 'M05',
  amount: 5,
  sealed: true,
  note: '',
  ...more,
});

/** J02 for one T07, with coir 6.0 L and charcoal 2.0 L in the Store and nothing else. */
function oneStack(): Records {
  const records = libraryJob({ sizes: [{ tank: 'T07', count: 1 }] });
  const entries = [...records.stockEntry].filter(([, { material }]) => material === 'M05' || material === 'M08');
  return { ...records, stockEntry: new Map(entries) };
}

describe('buildJob', () => {
  const media = ['M05', 'M06', 'M07', 'M08', 'M09'];

  test('bought for one T07 and built, the Store keeps coir 1.290, bark 6.290, fern 6.860, charcoal 2.430, moss 7.430', () => {
    const records = oneStack();
    const paid = after(records, recordDeposit(records, { job: 'J02', coins: 100, on }));
    const { run } = valueOf(derive(paid, on).run({ jobs: ['J02'], materials: media }));
    expect(run.togetherCoins).toBe(6600);
    const stocked = applyChange(paid, receiveOrder(paid, packsBought(run), 'Hollin Lane'));
    const built = applyChange(stocked, valueOf(buildJob(derive(stocked, on), 'J02')).change);
    expect(jobOf(built, 'J02').state).toBe('built');
    expect(media.map((material) => amountIn(built, material).toFixed(3))).toEqual([
      '1.290',
      '6.290',
      '6.860',
      '2.430',
      '7.430',
    ]);
  });

  test('what the Store had not is told, and it never holds less than nothing', () => {
    const records = oneStack();
    const { change, short } = valueOf(takeFromStore(derive(records, on), 'J02'));
    const built = applyChange(records, change);
    expect([...built.stockEntry]).toEqual([]);
    expect(
      short.filter(({ material }) => media.includes(material)).map((each) => [each.material, each.amount.toFixed(3)]),
    ).toEqual([
      ['M05', '7.710'],
      ['M06', '13.710'],
      ['M07', '9.140'],
      ['M08', '2.570'],
      ['M09', '4.570'],
    ]);
  });

  test('panes cut to size and goods of the back room are not looked for in the Store', () => {
    const { short } = valueOf(takeFromStore(derive(oneStack(), on), 'J02'));
    expect(short.filter(({ material }) => ['M25a', 'M25b', 'SP', 'IS', 'VAN'].includes(material))).toEqual([]);
  });
});

describe('reserveStock', () => {
  test('a part kept for a job is parted from its entry, and comes together with the job again', () => {
    const records = oneStack();
    const reserved = after(records, reserveStock(records, { job: 'J02', material: 'M05', amount: 4, on }));
    expect([reserved.stockEntry.get('K-M05')?.amount, reserved.stockEntry.get('K-M05-J02')]).toEqual([
      2,
      { ...records.stockEntry.get('K-M05'), id: 'K-M05-J02', amount: 4, reservedFor: 'J02' },
    ]);
    const free = applyChange(reserved, releaseStock(reserved, 'J02'));
    expect([...free.stockEntry.values()].filter((each) => each.reservedFor !== undefined)).toEqual([]);
  });

  test.each([
    ['M05', 9, 'The Store cannot keep 9 L of M05: 6 L are free.'],
    ['M55', 1, 'No material called M55. Did you mean M05?'],
    ['T07', 1, 'The Store cannot keep 1 each of T07: 0 each are free.'],
  ])('%s: %d is refused', (material, amount, says) => {
    const fault = faultOf(reserveStock(oneStack(), { job: 'J02', material, amount, on }));
    expect(fault && sayJobFault(fault)).toBe(says);
  });
});

describe('storePieces', () => {
  const store = [
    entry('sealed', {}),
    entry('opened', { sealed: false }),
    entry('soon', { bestBefore: '2027-04-01' }),
    entry('kept', { reservedFor: 'J02' }),
    entry('other', { reservedFor: 'J01' }),
    entry('held', { quarantineUntil: '2027-04-01' }),
    entry('past', { bestBefore: '2027-03-01' }),
  ];

  test('what is kept for the job goes first, then what is open, then what is soonest past its best', () => {
    const pieces = storePieces(store, { material: 'M05', amount: 18, on, job: 'J02' });
    expect(pieces.map((piece) => [piece.entry.id, piece.amount])).toEqual([
      ['kept', 5],
      ['opened', 5],
      ['soon', 5],
      ['sealed', 3],
    ]);
  });

  test('what is kept for another, in quarantine or past its best is never given', () => {
    const pieces = storePieces(store, { material: 'M05', amount: 100, on });
    expect(pieces.map((piece) => piece.entry.id)).toEqual(['opened', 'soon', 'sealed']);
  });
});

describe('receiveOrder', () => {
  test('packs come in sealed, an entry for each size of pack, under ids of their own', () => {
    const records = oneStack();
    const change = receiveOrder(
      records,
      [
        { material: 'M05', amount: 9, count: 2 },
        { material: 'PG', amount: 1, count: 6, quarantineUntil: '2027-04-09' },
      ],
      'Hollin Lane',
    );
    expect([change.label, change.added.map(({ record }) => record)]).toEqual([
      'order of Hollin Lane in',
      [
        { id: 'K-M05-2', material: 'M05', amount: 18, sealed: true, note: '2 x 9, Hollin Lane' },
        {
          id: 'K-PG',
          material: 'PG',
          amount: 6,
          sealed: true,
          note: '6 x 1, Hollin Lane',
          quarantineUntil: '2027-04-09',
        },
      ],
    ]);
  });
});

function amountIn(records: Records, material: string): number {
  return [...records.stockEntry.values()].reduce(
    (sum, each) => sum + (each.material === material ? each.amount : 0),
    0,
  );
}
