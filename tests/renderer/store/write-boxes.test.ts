import { describe, expect, test } from 'vitest';
import { demoRecords } from '#tests/demo-bench.ts';
import { benchAtHand } from './book-at-hand.ts';
import { box, shown } from './shown-box.ts';

describe('writing in boxes', () => {
  test('a figure without a unit takes that of its line, and the change is named in words', async () => {
    const hand = await benchAtHand();
    expect(hand.bench.acts.write([{ row: 'drain_gap', column: 'T08', text: '15' }])).toBeUndefined();
    expect(shown(hand, 'drain_gap', 'T08')).toEqual(['local', '15', 'plain', 'local', 'well']);
    await hand.quiet();
    expect(hand.book.line.peek().undo).toBe('air gap under the mesh of T08 to 15 mm');
    expect([...hand.service.records().localValue.values()]).toEqual([
      { id: 'J01-T08.drain_gap', job: 'J01', size: 'J01-T08', line: 'drain_gap', text: '15 mm', note: '', by: 'us' },
    ]);
  });

  test('a rule written here says so and is worked', async () => {
    const hand = await benchAtHand();
    hand.bench.acts.write([{ row: 'drain_gap', column: 'T08', text: 'clamp(drainage / 3, 10 mm, 20 mm)' }]);
    expect(shown(hand, 'drain_gap', 'T08')).toEqual(['local rule', '15', 'plain', 'local', 'well']);
  });

  test('several boxes are one change', async () => {
    const hand = await benchAtHand();
    hand.bench.acts.write(['T03', 'T07', 'T08'].map((column) => ({ row: 'litter', column, text: '20 mm' })));
    await hand.quiet();
    expect([hand.service.entries().length, hand.book.line.peek().undo]).toEqual([1, '3 boxes of Ferry waiting hall']);
  });

  test('one text that cannot be read keeps all of them from being written, and is named', async () => {
    const hand = await benchAtHand();
    const says = hand.bench.acts.write([
      { row: 'litter', column: 'T03', text: '20 mm' },
      { row: 'litter', column: 'T07', text: 'dam_hieght / 4' },
      { row: 'litter', column: 'T08', text: '20 L' },
    ]);
    expect(says).toMatch(
      /^Litter depth, T07: Nothing called dam_hieght\. Did you mean dam_height\?.*Litter depth, T08/s,
    );
    await hand.quiet();
    expect(hand.service.entries()).toEqual([]);
  });

  test('a rule that leads back to itself is refused with the whole cycle', async () => {
    const hand = await benchAtHand();
    expect(hand.bench.acts.write([{ row: 'drainage', column: 'T07', text: 'soil_front / 3' }])).toBe(
      'This box depends on itself: drainage -> soil_front -> drainage.',
    );
  });

  test('emptying a box that follows the house leaves it without a figure, and what reads it waits by name', async () => {
    const hand = await benchAtHand();
    hand.bench.acts.write([{ row: 'moisture_start', column: 'T03', text: '' }]);
    expect([shown(hand, 'moisture_start', 'T03'), shown(hand, 'wetting', 'T03')]).toEqual([
      ['needs a figure', '', 'needs', 'local', 'well'],
      ['waits on moisture at start', '', 'waiting', 'house', 'flat'],
    ]);
  });

  test('emptying a box that is written over takes it back to the house, as Delete does', async () => {
    const hand = await benchAtHand();
    hand.bench.acts.write([{ row: 'litter', column: 'T03', text: '20' }]);
    hand.bench.acts.write([{ row: 'litter', column: 'T03', text: '' }]);
    expect(shown(hand, 'litter', 'T03')).toEqual(['', '30', 'plain', 'house', 'well']);
    hand.bench.acts.write([{ row: 'litter', column: 'T03', text: '20' }]);
    hand.bench.acts.clear([{ row: 'litter', column: 'T03' }]);
    expect(shown(hand, 'litter', 'T03')).toEqual(['', '30', 'plain', 'house', 'well']);
  });

  test('a figure out of its range computes all the same', async () => {
    const hand = await benchAtHand();
    hand.bench.acts.write([{ row: 'litter', column: 'T03', text: '130' }]);
    expect(shown(hand, 'litter', 'T03')).toEqual(['local, out of range', '130', 'range', 'local', 'well']);
  });

  test('with inches shown a bare number is inches, and with a comma it is read by the comma', async () => {
    const records = demoRecords();
    const [workshop] = records.workshop.values();
    if (!workshop) throw new Error('no workshop');
    const set = { ...workshop, unitsShown: { length: 'in' }, decimalComma: true };
    const hand = await benchAtHand({ ...records, workshop: new Map([['workshop', set]]) });
    hand.bench.acts.write([{ row: 'litter', column: 'T03', text: '1,5' }]);
    hand.bench.acts.write([{ row: 'drain_gap', column: 'T03', text: '12,5 mm' }]);
    await hand.quiet();
    const kept = [...hand.service.records().localValue.values()].map((value) => value.text);
    expect([kept, box(hand, 'litter', 'T03')?.figure, box(hand, 'drain_gap', 'T03')?.entry]).toEqual([
      ['1.5 in', '12.5 mm'],
      '1,5',
      '12,5 mm',
    ]);
  });

  test('a value for the whole job stands in every size, and Delete takes it back', async () => {
    const hand = await benchAtHand();
    hand.bench.acts.write([{ row: 'soil_rise', column: 'T03', text: '0' }]);
    expect(hand.bench.hands.forWholeJob({ row: 'soil_rise', column: 'T03' })).toBeUndefined();
    expect(['T03', 'T07', 'T08'].map((column) => shown(hand, 'soil_rise', column))).toEqual(
      Array.from({ length: 3 }, () => ['whole job', '0', 'plain', 'job', 'well']),
    );
    hand.bench.acts.clear([{ row: 'soil_rise', column: 'T07' }]);
    expect(shown(hand, 'soil_rise', 'T03')).toEqual(['', '40', 'plain', 'house', 'well']);
  });

  test("a value sent to the house is every size's from then on", async () => {
    const hand = await benchAtHand();
    hand.bench.acts.write([{ row: 'litter', column: 'T03', text: '25' }]);
    hand.bench.hands.sendToHouse({ row: 'litter', column: 'T03' });
    expect([shown(hand, 'litter', 'T03'), shown(hand, 'litter', 'T08')]).toEqual([
      ['', '25', 'plain', 'house', 'well'],
      ['', '25', 'plain', 'house', 'well'],
    ]);
  });

  test('another kit for one size is a local value, and the kit of the house takes it away', async () => {
    const hand = await benchAtHand();
    hand.bench.acts.setKit('T07', 'show');
    expect(hand.bench.view.peek().columns.map((column) => column.kit)).toEqual(['full', 'show', 'full']);
    hand.bench.acts.setKit('T07', 'full');
    expect(shown(hand, 'kit', 'T07')).toEqual(['', 'full', 'plain', 'house', 'well']);
  });
});
