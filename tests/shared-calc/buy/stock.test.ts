import { describe, expect, test } from 'vitest';
import { stockOnHand, takeStock } from '#shared-calc/buy/stock.ts';
import type { StockEntry } from '#shared-calc/records/records.ts';

const open: StockEntry = { id: 's1', material: 'M05', amount: 6, sealed: false, note: '' };

describe('stockOnHand', () => {
  test('adds up what is free to use on that day', () => {
    const entries: readonly StockEntry[] = [
      open,
      { ...open, id: 's2', amount: 9, sealed: true },
      { ...open, id: 's3', amount: 70, reservedFor: 'J02' },
      { ...open, id: 's4', material: 'M26', amount: 100, bestBefore: '2027-07-14' },
      { ...open, id: 's5', material: 'PG', amount: 12, quarantineUntil: '2027-07-16' },
    ];
    expect([...stockOnHand(entries, { on: '2027-07-15' })]).toEqual([['M05', 15]]);
    expect([...stockOnHand(entries, { on: '2027-07-15', jobs: ['J02'] })]).toEqual([['M05', 85]]);
    expect([...stockOnHand(entries, { on: '2027-07-16' })]).toEqual([
      ['M05', 15],
      ['PG', 12],
    ]);
  });
});

describe('takeStock', () => {
  test('the first takes what it uses, the next what is left', () => {
    const first = takeStock(
      new Map([['M05', 6]]),
      new Map([
        ['M05', 4],
        ['M06', 3],
      ]),
    );
    const next = takeStock(first.left, new Map([['M05', 4]]));
    expect([[...first.taken], [...next.taken], [...next.left]]).toEqual([[['M05', 4]], [['M05', 2]], [['M05', 0]]]);
  });
});
