import { describe, expect, test } from 'vitest';
import { batchLabel } from '#shared-calc/prepare/batch-label.ts';
import { wasMoistened } from '#shared-calc/prepare/moistened.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { plainDisplay } from '#shared-calc/quantity/shown-unit.ts';
import { demoRecords } from '#tests/demo-bench.ts';
import { done, refused } from './do-act.ts';

const input = {
  material: 'M15',
  litres: 10.88,
  way: 'bake',
  aim: 'clean',
  on: '2027-03-01',
  collectedAt: ' Fern Hill wood ',
  moistened: true,
  note: 'dry year',
} as const;
const made = done(demoRecords(), 'newBatch', input);

function batchOf({ treatmentBatch }: Records) {
  const batch = treatmentBatch.get('TB-001');
  if (!batch) throw new Error('no batch');
  return batch;
}

describe('newBatch', () => {
  test('its label says leaves, place, day, way, and that the core was not measured', () => {
    expect([made.label, batchLabel(batchOf(made.records), { records: made.records, display: plainDisplay })]).toEqual([
      'batch TB-001: 10.88 L of leaves treated',
      [
        'Small oak leaves, dry',
        '10.88 L loose',
        'Collected: Fern Hill wood',
        'Treated 1 March 2027: baked, aim clean',
        'Core: not measured',
        'moistened 16 h before; dry year',
      ],
    ]);
    expect(wasMoistened(batchOf(made.records))).toBe(true);
  });

  test('a batch without its place is refused: the label needs it', () => {
    expect(refused(demoRecords(), 'newBatch', { ...input, collectedAt: ' ' })).toBe(
      'Say where the leaves were collected: it stands on the label.',
    );
  });

  test('the next one is numbered after it', () => {
    expect([...done(made.records, 'newBatch', input).records.treatmentBatch.keys()]).toEqual(['TB-001', 'TB-002']);
  });
});

describe('logBatch', () => {
  test('a log is kept with the batch, and its label says the hottest core', () => {
    const log: [number, number][] = [
      [0, 20],
      [30, 85.5],
      [60, 92],
    ];
    const { label, records } = done(made.records, 'logBatch', { batch: 'TB-001', log });
    expect([label, batchOf(records).log, batchLabel(batchOf(records), { records, display: plainDisplay })[4]]).toEqual([
      'core log of batch TB-001',
      log,
      'Core: 92 degC at its hottest',
    ]);
  });
});

describe('removeBatch', () => {
  test('a batch that is taken out is gone', () => {
    const { label, records } = done(made.records, 'removeBatch', { batch: 'TB-001' });
    expect([label, records.treatmentBatch.size]).toEqual(['batch TB-001 taken out', 0]);
    expect(refused(records, 'removeBatch', { batch: 'TB-001' })).toMatch(/^There is no treatment batch TB-001\./);
  });
});
