import { describe, expect, test } from 'vitest';
import { batchNow } from '#shared-calc/prepare/animal-quarantine.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { demoRecords } from '#tests/demo-bench.ts';
import { done, refused } from './do-act.ts';

const named = done(demoRecords(), 'setAnimals', { job: 'J01', column: 'T07', animalKind: 'A1', animals: 4 }).records;
const came = (records: Records, cameOn: string, count = 6) =>
  done(records, 'newAnimalBatch', { kind: 'A1', count, cameOn, from: 'own', place: '', note: '' }).records;
/** Six frogs that came long ago: their 60 days are over. */
const settled = came(named, '2026-12-01');
/** The same, ten days before the day of the demo. */
const apart = came(named, '2027-02-26');
const into = { batch: 'AB-001', size: 'J01-T07' };

function batchOf(records: Records) {
  const batch = records.animalBatch.get('AB-001');
  if (!batch) throw new Error('no batch');
  return batch;
}

describe('setAnimals', () => {
  test('a size names its kind and how many, and takes both back', () => {
    const size = (records: Records) => records.size.get('J01-T07');
    const gone = done(named, 'setAnimals', { job: 'J01', column: 'T07', animalKind: null, animals: null }).records;

    expect([size(named)?.animalKind, size(named)?.animals]).toEqual(['A1', 4]);
    expect(size(gone)).toEqual(size(demoRecords()));
  });

  test('no animals at all is an answer of its own: plants only', () => {
    const plants = done(named, 'setAnimals', { job: 'J01', column: 'T07', animalKind: null, animals: 0 }).records;

    expect(plants.size.get('J01-T07')?.animals).toBe(0);
  });

  test('a kind that is not in the animal book is refused', () => {
    expect(refused(named, 'setAnimals', { job: 'J01', column: 'T03', animalKind: 'A77' })).toContain('A77');
  });

  test('a size keeps its kind while a batch is planned into it', () => {
    const placed = done(settled, 'placeAnimals', { ...into, count: 4 }).records;

    expect(refused(placed, 'setAnimals', { job: 'J01', column: 'T07', animalKind: 'A2' })).toBe(
      'Batch AB-001 is planned into T07: take it back first.',
    );
  });
});

describe('a kind of animal', () => {
  test('that sizes name is not removed: they are named', () => {
    expect(refused(named, 'remove', { kind: 'animalKind', id: 'A1' })).toBe(
      'Animal kind A1 is still used by size J01-T07.',
    );
  });

  test.each([
    [{ floor: 28 }, 'Floor, 28 °C, must lie below act from, 26 °C.'],
    [{ bandHigh: 0.7 }, 'Humidity from, 75 %, must lie below humidity to, 70 %.'],
    [{ groupMost: 1 }, 'Group from, 2, may not lie above group to, 1.'],
  ])('with %j is refused', (figures, says) => {
    const kind = named.animalKind.get('A1');
    if (!kind) throw new Error('no kind');

    expect(refused(named, 'put', { kind: 'animalKind', record: { ...kind, ...figures } })).toBe(says);
  });
});

describe('newAnimalBatch', () => {
  test('batches are numbered, and their quarantine begins on the day they came', () => {
    const second = came(settled, '2027-03-01', 2);

    expect([...second.animalBatch.keys()]).toEqual(['AB-001', 'AB-002']);
    expect(batchNow(batchOf(apart), apart, '2027-03-08')).toMatchObject({
      until: '2027-04-27',
      daysLeft: 50,
      unplaced: 6,
    });
  });

  test('a day that is none and a kind that is none are refused', () => {
    const input = { kind: 'A1', count: 1, from: 'own', place: '', note: '' };

    expect(refused(named, 'newAnimalBatch', { ...input, cameOn: '2027-02-31' })).toContain('2027-02-31');
    expect(refused(named, 'newAnimalBatch', { ...input, kind: 'frog' })).toContain('frog');
  });
});

describe('joinAnimals', () => {
  test('one more animal starts the quarantine of all of them again', () => {
    const { records, label } = done(settled, 'joinAnimals', { batch: 'AB-001', count: 1, on: '2027-03-01' });

    expect(label).toBe('1 joined batch AB-001');
    expect(batchNow(batchOf(records), records, '2027-03-08')).toMatchObject({
      until: '2027-04-30',
      daysLeft: 53,
      unplaced: 7,
    });
  });
});

describe('lookAtAnimals and testAnimals', () => {
  test('what was seen and what the vet found stand by their days', () => {
    const seen = done(apart, 'lookAtAnimals', { batch: 'AB-001', seen: 'all eat', on: '2027-03-06' }).records;
    const earlier = done(seen, 'lookAtAnimals', { batch: 'AB-001', seen: 'one thin ', on: '2027-03-02' }).records;
    const tested = done(earlier, 'testAnimals', { batch: 'AB-001', which: 'droppings', result: 'clear' }).records;

    expect(batchOf(tested)).toMatchObject({
      looks: [
        { on: '2027-03-02', seen: 'one thin' },
        { on: '2027-03-06', seen: 'all eat' },
      ],
      tests: [{ which: 'droppings', on: '2027-03-08', result: 'clear' }],
    });
  });
});

describe('placeAnimals', () => {
  test('animals whose quarantine is over go into a size of their kind', () => {
    const { records, label } = done(settled, 'placeAnimals', { ...into, count: 4 });

    expect(label).toBe('4 of batch AB-001 into J01-T07');
    expect([...records.placement.values()]).toEqual([
      { id: 'AP-001', ...into, count: 4, on: '2027-03-08', anyway: '' },
    ]);
    expect(batchNow(batchOf(records), records, '2027-03-08').unplaced).toBe(2);
  });

  test('before it is over they stay, unless somebody says why, whose reason is kept', () => {
    const reason = { anyway: 'the vet agrees', who: 'R-builder' };
    const { placement } = done(apart, 'placeAnimals', { ...into, count: 4, ...reason }).records;

    expect(refused(apart, 'placeAnimals', { ...into, count: 4 })).toBe(
      'Batch AB-001 is in quarantine until 27 April 2027, 50 days after 8 March 2027. To plan them in all the same, give a reason and who decides.',
    );
    expect([...placement.values()]).toMatchObject([reason]);
  });

  test('on the day it is over they may go in; a reason is not kept where none is needed', () => {
    const wish = { ...into, count: 1, on: '2027-04-27', anyway: 'in haste', who: 'R-builder' };
    const { placement } = done(apart, 'placeAnimals', wish).records;

    expect(refused(apart, 'placeAnimals', { ...into, count: 1, on: '2027-04-26' })).toContain(
      '1 day after 26 April 2027',
    );
    expect([...placement.values()]).toEqual([{ id: 'AP-001', ...into, count: 1, on: '2027-04-27', anyway: '' }]);
  });

  test.each([
    [{ anyway: 'in haste' }, 'Say who decides it, such as R-builder.'],
    [{ who: 'R-builder' }, 'Give the reason why it is done all the same.'],
    [{ anyway: '  ', who: 'R-builder' }, 'Give the reason why it is done all the same.'],
  ])('%j is half a reason', (half, says) => {
    expect(refused(apart, 'placeAnimals', { ...into, count: 1, ...half })).toBe(says);
  });

  test('more than the batch has, and a size of another kind or of none, are refused', () => {
    const other = done(settled, 'setAnimals', { job: 'J01', column: 'T03', animalKind: 'A2' }).records;

    expect(refused(settled, 'placeAnimals', { ...into, count: 7 })).toBe('Batch AB-001 has 6 animals for that, not 7.');
    expect(refused(other, 'placeAnimals', { ...into, size: 'J01-T03', count: 1 })).toBe(
      'J01-T03 is for another kind of animal, A2, than batch AB-001.',
    );
    expect(refused(other, 'placeAnimals', { ...into, size: 'J01-T08', count: 1 })).toBe(
      'J01-T08 names no kind of animal: name the kind of batch AB-001 there first.',
    );
  });

  test('a size with animals planned into it is not taken off its job', () => {
    const placed = done(settled, 'placeAnimals', { ...into, count: 4 }).records;

    expect(refused(placed, 'dropSize', { job: 'J01', column: 'T07' })).toContain('AP-001');
  });
});

describe('changeAnimals and takeBackAnimals', () => {
  const placed = done(settled, 'placeAnimals', { ...into, count: 4 }).records;

  test('a batch never has fewer animals than are planned in', () => {
    expect(refused(placed, 'changeAnimals', { batch: 'AB-001', fields: { count: 3 } })).toBe(
      'Batch AB-001 has 3 animals for that, not 4.',
    );
    const { records } = done(placed, 'changeAnimals', { batch: 'AB-001', fields: { count: 4, place: 'Shelf 2' } });
    expect(batchOf(records)).toMatchObject({ count: 4, place: 'Shelf 2' });
  });

  test('what was planned in is taken back', () => {
    const { records } = done(placed, 'takeBackAnimals', { placement: 'AP-001' });

    expect([records.placement.size, batchNow(batchOf(records), records, '2027-03-08').unplaced]).toEqual([0, 6]);
  });
});
