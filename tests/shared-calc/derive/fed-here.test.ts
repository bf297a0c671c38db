import { describe, expect, test } from 'vitest';
import { derive } from '#shared-calc/derive/derived.ts';
import { fedHere } from '#shared-calc/derive/fed-here.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';
import { busyBook } from '#tests/renderer/places/prepare/busy-book.ts';
import { done } from '#tests/shared-calc/acts/do-act.ts';

function eaten(records: Records, id = 'C5') {
  const derived = derive(records, DEMO_DAY);
  const kind = records.cultureKind.get(id);
  if (!kind) throw new Error(id);
  const { aWeek, eaters, unknown } = fedHere(derived, kind);
  return [aWeek, eaters.map(({ called, aWeek: each }) => [called.slice(0, 12), each]), unknown];
}

const busy = busyBook();
const batch = { kind: 'A1', count: 6, cameOn: '2026-11-01', from: 'own', place: '', note: '' };
const withBatch = done(busy, 'newAnimalBatch', batch).records;
/** J02 is paid and not built yet: one T05. */
const withJob = done(withBatch, 'setAnimals', { job: 'J02', column: 'T05', animalKind: 'A1', animals: 4 }).records;

describe('fedHere', () => {
  test('where no animal is named nobody eats', () => {
    expect(eaten(busy)).toEqual([0, [], []]);
  });

  test('six frogs at 20 flies a day eat 840 a week, and the four of a paid job 560 more', () => {
    const job = busy.job.get('J02')?.title ?? '';

    expect(eaten(withBatch)).toEqual([840, [['batch AB-001', 840]], []]);
    expect(eaten(withJob)).toEqual([
      1400,
      [
        ['batch AB-001', 840],
        [`J02 ${job}`.slice(0, 12), 560],
      ],
      [],
    ]);
  });

  test('frogs of the batch that are planned into the job are fed once', () => {
    const placed = done(withJob, 'placeAnimals', { batch: 'AB-001', size: 'J02-T05', count: 4 }).records;

    expect(eaten(placed)).toEqual([840, [['batch AB-001', 840]], []]);
  });

  test('large flies are eaten by others', () => {
    expect(eaten(withJob, 'C6')).toEqual([0, [], []]);
  });

  test('a number that nobody has said is not known, never 0', () => {
    const unsaid = done(withBatch, 'setAnimals', { job: 'J02', column: 'T05', animalKind: 'A1' }).records;
    const [aWeek, , unknown] = eaten(unsaid);

    expect([aWeek, unknown]).toEqual([840, [expect.stringContaining('T05 of J02')]]);
  });
});
