import { describe, expect, test } from 'vitest';
import { newBatch, wasMoistened, withLog, withoutBatch } from '#renderer/places/prepare/write-batch.ts';
import { leafMaterials } from '#shared-calc/prepare/leaves-of.ts';
import { batchLabel } from '#shared-calc/prepare/batch-label.ts';
import { applyChange } from '#shared-calc/records/change.ts';
import { demoRecords } from '#tests/demo-bench.ts';

const records = demoRecords();
const texts = { material: 'M15', litres: '10.88', collectedAt: 'Fern Hill wood', on: '2027-03-01', note: 'dry year' };
const treated = { way: 'bake', aim: 'clean', moistened: true, today: '2027-03-08', decimalComma: false } as const;

function made() {
  const done = newBatch(records, texts, treated);
  if (!done.ok) throw new Error(done.fault);
  const after = applyChange(records, done.value.change);
  const batch = after.treatmentBatch.get(done.value.id);
  if (!batch) throw new Error('no batch');
  return { after, batch };
}

describe('newBatch', () => {
  test('its label says leaves, place, day, way, and that the core was not measured', () => {
    const { batch, after } = made();
    expect([batch.id, batchLabel(batch, after)]).toEqual([
      'TB-001',
      [
        'Small oak leaves, dry',
        '10.88 L loose',
        'Collected: Fern Hill wood',
        'Treated 1 March 2027: baked, aim clean',
        'Core: not measured',
        'moistened 16 h before; dry year',
      ],
    ]);
  });

  test('a batch without its place is refused: the label needs it', () => {
    expect(newBatch(records, { ...texts, collectedAt: ' ' }, treated)).toEqual({
      ok: false,
      fault: 'Say where the leaves were collected: it stands on the label.',
    });
  });

  test('the next one is numbered after it', () => {
    const again = newBatch(made().after, texts, treated);
    expect(again.ok && again.value.id).toBe('TB-002');
  });
});

describe('withLog', () => {
  test('a pasted log is kept with the batch, and its label says the hottest core', () => {
    const { batch, after } = made();
    const done = withLog(batch, 'min\tdegC\n0\t20\n30\t85.5\n60\t92');
    const logged = done.ok ? applyChange(after, done.value).treatmentBatch.get(batch.id) : undefined;
    expect([logged?.log, logged && batchLabel(logged, after)[4]]).toEqual([
      [
        [0, 20],
        [30, 85.5],
        [60, 92],
      ],
      'Core: 92 degC at its hottest',
    ]);
  });

  test('a row that cannot be read is named, and nothing is half taken in', () => {
    expect(withLog(made().batch, '0 20\n30 hot\n60 92')).toEqual({
      ok: false,
      fault: 'Row 2: "30 hot" is not minutes and degC, as 12 84.5.',
    });
  });
});

describe('wasMoistened', () => {
  test('a batch remembers that its leaves were moistened', () => {
    expect([wasMoistened(made().batch), wasMoistened({ note: 'dry' })]).toEqual([true, false]);
  });
});

describe('withoutBatch', () => {
  test('a batch that is taken out is gone', () => {
    const { batch, after } = made();
    expect(applyChange(after, withoutBatch(batch)).treatmentBatch.size).toBe(0);
  });
});

describe('leafMaterials', () => {
  test('leaves are what recipes ask for as litter, and what is called so', () => {
    expect(leafMaterials(records).map(({ id }) => id)).toEqual(['M15', 'M16', 'M17']);
  });
});
