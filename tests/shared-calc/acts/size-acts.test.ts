import { describe, expect, test } from 'vitest';
import { sizesOf } from '#shared-calc/jobs/job-sheet.ts';
import type { Records, Tank } from '#shared-calc/records/records.ts';
import { DEMO_DAY, demoRecords } from '#tests/demo-bench.ts';
import { done, refused } from './do-act.ts';

const demo = demoRecords();
const bench = (records: Records) =>
  sizesOf(records, 'J01').map(({ id, tank, count, label }) => [id, tank, count, label].join(' ').trim());
const onT07 = { job: 'J01', column: 'T07' };
const gap = done(demo, 'writeCells', { job: 'J01', cells: [{ line: 'drain_gap', column: 'T07', text: '15' }] }).records;

const ownTank: Tank = {
  id: 'T50',
  label: "client's own",
  shape: 'rectangle',
  insideLengthMm: 600,
  insideDepthMm: 450,
  insideHeightMm: 500,
  clientsOwn: true,
  note: '',
};

describe('takeSize', () => {
  test('a tank stands behind the others; the same once more is taken again', () => {
    const taken = done(demo, 'takeSize', { job: 'J01', tank: 'T05' });
    const again = done(taken.records, 'takeSize', { job: 'J01', tank: 'T05' });
    expect([taken.label, again.label, bench(again.records).slice(3)]).toEqual([
      'T05 taken',
      'T05 taken again',
      ['J01-T05 T05 1', 'J01-T05-2 T05 1'],
    ]);
  });

  test('a tank of no book is not taken', () => {
    expect(refused(demo, 'takeSize', { job: 'J01', tank: 'T99' })).toMatch(/^No tank called T99 in the tank book\./);
  });
});

describe('newTank', () => {
  test('is entered, priced from today and taken in one step', () => {
    const tank = { ...ownTank, clientsOwn: false };
    const { label, records } = done(demo, 'newTank', { job: 'J01', tank, priceCoins: 12_900 });
    const price = [...records.packPrice.values()].find(({ pack }) => pack === 'T50-1');
    expect([label, bench(records)[3], price?.priceCoins, price?.from]).toEqual([
      'T50 entered and taken',
      'J01-T50 T50 1',
      12_900,
      DEMO_DAY,
    ]);
  });

  test("the client's own is not bought", () => {
    const { records } = done(demo, 'newTank', { job: 'J01', tank: ownTank });
    const local = [...records.localValue.values()].find(({ size }) => size === 'J01-T50');
    expect([records.line.get(`H1.${local?.line}`)?.use, local?.text, local?.by]).toEqual([
      'clientTank',
      'yes',
      'client',
    ]);
  });

  test('a code that is taken is refused', () => {
    expect(refused(demo, 'newTank', { job: 'J01', tank: { ...ownTank, id: 'T07' } })).toBe(
      'There is a tank called T07 already: choose another code.',
    );
  });
});

describe('takeAgain and copySize', () => {
  test('a second column stands straight after its tank: by the house, or with local values and count', () => {
    const twice = done(gap, 'setCount', { ...onT07, count: 2 }).records;
    const again = done(twice, 'takeAgain', onT07);
    const copied = done(twice, 'copySize', onT07);
    expect([again.label, bench(again.records)[2], again.records.localValue.size]).toEqual([
      'T07 taken again',
      'J01-T07-2 T07 1',
      1,
    ]);
    expect([copied.label, bench(copied.records)[2], copied.records.localValue.size]).toEqual([
      'T07 copied',
      'J01-T07-2 T07 2',
      2,
    ]);
  });
});

describe('dropSize', () => {
  test('a size goes with its local values', () => {
    const { label, records } = done(gap, 'dropSize', onT07);
    expect([label, bench(records), records.localValue.size]).toEqual([
      'T07 put away',
      ['J01-T03 T03 1', 'J01-T08 T08 1'],
      0,
    ]);
  });

  test('one that something was measured of stays', () => {
    const actual = {
      id: 'A',
      job: 'J01',
      size: 'J01-T07',
      line: 'watch_hours',
      value: 48,
      unit: 'h',
      on: DEMO_DAY,
      note: '',
    };
    expect(refused({ ...demo, actual: new Map([['A', actual]]) }, 'dropSize', onT07)).toBe(
      'T07 stays: what it took has been written down for it.',
    );
  });
});

describe('setCount', () => {
  test('a size is built a whole number of times', () => {
    expect(done(demo, 'setCount', { ...onT07, count: 3 }).label).toBe('T07 times 3');
    expect(refused(demo, 'setCount', { ...onT07, count: 0 })).toBe('T07: build a size 1 to 999 times.');
    expect(refused(demo, 'setCount', { ...onT07, count: 1.5 })).toBe('T07: build a size 1 to 999 times.');
  });
});

describe('nameSize', () => {
  test('a size is called by its own name, or by its tank again', () => {
    const named = done(demo, 'nameSize', { ...onT07, label: '  Left of  the door ' });
    const plain = done(named.records, 'nameSize', { ...onT07, label: ' ' });
    expect([named.label, bench(named.records)[1], plain.label]).toEqual([
      'T07 called Left of the door',
      'J01-T07 T07 1 Left of the door',
      'Left of the door called by its tank, T07',
    ]);
  });
});
