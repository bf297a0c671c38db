import { describe, expect, test } from 'vitest';
import { storeRows } from '#renderer/places/store/store-rows.ts';
import type { StockEntry } from '#shared-calc/records/records.ts';
import { demoRecords } from '#tests/demo-bench.ts';
import { withRecords } from '#tests/shared-calc/jobs/demo-jobs.ts';

const bag = (id: string, amount: number, more: Partial<StockEntry> = {}): StockEntry => ({
  id,
  material: 'M26',
  amount,
  sealed: true,
  note: '',
  ...more,
});

describe('storeRows', () => {
  test('each material says what is sealed, opened, free, kept, in quarantine and past its best', () => {
    const records = withRecords({ ...demoRecords(), stockEntry: new Map() }, 'stockEntry', [
      bag('K1', 100),
      bag('K2', 40, { sealed: false, bestBefore: '2027-06-01' }),
      bag('K3', 100, { reservedFor: 'J01' }),
      bag('K4', 20, { quarantineUntil: '2027-04-09' }),
      bag('K5', 10, { bestBefore: '2027-03-09' }),
    ]);
    const [{ entries, ...row }] = storeRows(records, '2027-03-10') as [ReturnType<typeof storeRows>[number]];
    expect([row, entries.length]).toEqual([
      {
        material: 'M26',
        label: 'Microbial inoculant powder',
        unit: 'g',
        sealed: 230,
        opened: 40,
        free: 140,
        kept: [{ job: 'J01', amount: 100 }],
        inQuarantine: 20,
        pastBest: 10,
        bestBefore: '2027-03-09',
      },
      5,
    ]);
  });

  test('materials stand in order of their codes, tanks among them', () => {
    const records = withRecords(demoRecords(), 'stockEntry', [
      { id: 'K-T05', material: 'T05', amount: 1, sealed: true, note: '' },
    ]);
    expect(storeRows(records, '2027-03-10').map(({ material }) => material)).toEqual([
      'M01',
      'M05',
      'M08',
      'M15',
      'M18',
      'M24',
      'M28',
      'M30',
      'T05',
    ]);
  });
});
