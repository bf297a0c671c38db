import { describe, expect, test } from 'vitest';
import { batchLabel } from '#shared-calc/prepare/batch-label.ts';
import type { TreatmentBatch } from '#shared-calc/records/records.ts';
import { plainDisplay } from '#shared-calc/quantity/shown-unit.ts';
import { demoRecords } from '#tests/demo-bench.ts';

const batch: TreatmentBatch = {
  id: 'TB-1',
  material: 'M15',
  litres: 12.6,
  way: 'bake',
  aim: 'clean',
  on: '2027-04-06',
  collectedAt: 'Withy copse, east side',
  log: [
    [0, 21],
    [23, 90.5],
    [53, 97],
  ],
  note: '',
};

describe('batchLabel', () => {
  test('the bag says what leaves, where from, when, how and how hot', () => {
    expect(batchLabel(batch, { records: demoRecords(), display: plainDisplay })).toEqual([
      'Small oak leaves, dry',
      '12.6 L loose',
      'Collected: Withy copse, east side',
      'Treated 6 April 2027: baked, aim clean',
      'Core: 97 degC at its hottest',
    ]);
  });

  test('what was not written down is said to be missing', () => {
    expect(
      batchLabel(
        { ...batch, collectedAt: '', log: [], note: 'top shelf' },
        { records: demoRecords(), display: plainDisplay },
      ).slice(2),
    ).toEqual([
      'Collected: not written down',
      'Treated 6 April 2027: baked, aim clean',
      'Core: not measured',
      'top shelf',
    ]);
  });
});
