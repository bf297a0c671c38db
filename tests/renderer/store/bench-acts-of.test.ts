import { describe, expect, test } from 'vitest';
import { benchAtHand, type BenchAtHand } from './book-at-hand.ts';
import { box, shown } from './shown-box.ts';
import { changedBoxes } from '#renderer/places/quotes/changed-boxes.ts';
import { demoRecords } from '#tests/demo-bench.ts';
import { issued, libraryJob } from '#tests/shared-calc/jobs/demo-jobs.ts';

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
    const texts = [...hand.service.records().localValue.values()].map((value) => value.text);
    expect([texts, box(hand, 'litter', 'T03')?.figure, box(hand, 'drain_gap', 'T03')?.entry]).toEqual([
      ['1.5 in', '12.5 mm'],
      '1,5',
      '12,5 mm',
    ]);
  });

  test('a value for the whole job stands in every size, and Delete takes it back', async () => {
    const hand = await benchAtHand();
    hand.bench.acts.write([{ row: 'soil_rise', column: 'T03', text: '0' }]);
    expect(hand.bench.acts.holdForJob({ row: 'soil_rise', column: 'T03' })).toBeUndefined();
    expect(['T03', 'T07', 'T08'].map((column) => shown(hand, 'soil_rise', column))).toEqual(
      Array.from({ length: 3 }, () => ['whole job', '0', 'plain', 'job', 'well']),
    );
    hand.bench.acts.clear([{ row: 'soil_rise', column: 'T07' }]);
    expect(shown(hand, 'soil_rise', 'T03')).toEqual(['', '40', 'plain', 'house', 'well']);
  });

  test("a value sent to the house is every size's from then on", async () => {
    const hand = await benchAtHand();
    hand.bench.acts.write([{ row: 'litter', column: 'T03', text: '25' }]);
    hand.bench.acts.sendToHouse({ row: 'litter', column: 'T03' });
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

const askers = ({ book }: BenchAtHand) => [...book.records.peek().localValue.values()].map(({ by }) => by);
const shownAsked = ({ bench }: BenchAtHand) => bench.panel.peek()?.house?.asked;

async function gapWritten(): Promise<BenchAtHand> {
  const hand = await benchAtHand();
  hand.bench.acts.write([{ row: 'drain_gap', column: 'T08', text: '15 mm' }]);
  hand.bench.acts.choose({ row: 'drain_gap', column: 'T08' });
  return hand;
}

describe('who asked for a value', () => {
  test('a local value is ours until the client is said to have asked for it, and undo takes that back alone', async () => {
    const hand = await gapWritten();
    expect([askers(hand), shownAsked(hand)]).toEqual([['us'], { byClient: false, closed: false }]);
    hand.bench.panelActs.clientAsked(true);
    expect([askers(hand), shownAsked(hand)]).toEqual([['client'], { byClient: true, closed: false }]);
    await hand.quiet();
    expect([hand.service.entries().length, hand.book.line.peek().undo]).toEqual([
      2,
      'air gap under the mesh of T08, asked for by the client',
    ]);
    hand.book.undo();
    await hand.quiet();
    expect([askers(hand), shownAsked(hand)]).toEqual([['us'], { byClient: false, closed: false }]);
  });

  test('it can be said of a value for the whole job, and the size it came from takes it along', async () => {
    const hand = await gapWritten();
    hand.bench.panelActs.clientAsked(true);
    hand.bench.panelActs.forWholeJob();
    expect([askers(hand), shownAsked(hand)]).toEqual([['client'], { byClient: true, closed: false }]);
    hand.bench.panelActs.clientAsked(false);
    await hand.quiet();
    expect([askers(hand), hand.book.line.peek().undo]).toEqual([
      ['us'],
      'air gap under the mesh of the whole job, asked for by us',
    ]);
  });

  test('a note leaves it with the client, another figure is ours again', async () => {
    const hand = await gapWritten();
    hand.bench.panelActs.clientAsked(true);
    hand.bench.panelActs.writeNote('as in the hall');
    expect(askers(hand)).toEqual(['client']);
    hand.bench.acts.write([{ row: 'drain_gap', column: 'T08', text: '16 mm' }]);
    expect(askers(hand)).toEqual(['us']);
  });

  test('a box that follows the house has nobody who asked', async () => {
    const hand = await benchAtHand();
    expect(hand.bench.acts.sayWhoAsked({ row: 'litter', column: 'T03' }, 'client')).toBe(
      'Only a local value has somebody who asked for it: write one first.',
    );
  });

  test('the next quote tells it as the wish of the client', async () => {
    const first = issued(libraryJob(), 'A');
    const hand = await benchAtHand(first.records);
    hand.bench.open('J02');
    hand.bench.acts.write([{ row: 'litter', column: 'T05', text: '20 mm' }]);
    hand.bench.acts.sayWhoAsked({ row: 'litter', column: 'T05' }, 'client');
    expect(changedBoxes(first.body, issued(hand.book.records.peek(), 'B').body)).toEqual([
      { what: 'Litter depth of T05', from: 'as the house', to: '20 mm', by: 'client' },
    ]);
  });
});

const heads = ({ bench }: BenchAtHand) => bench.view.peek().columns.map(({ key, label }) => [key, label]);

describe('the name of a size', () => {
  test('a size is called by its own name on the bench, and undo calls it by its tank again', async () => {
    const hand = await benchAtHand();
    expect(hand.bench.acts.nameSize('T07', '  Left of  the door ')).toBeUndefined();
    const named = heads(hand);
    await hand.quiet();
    const step = hand.book.line.peek().undo;
    hand.book.undo();
    await hand.quiet();
    expect([named, step, heads(hand)]).toEqual([
      [
        ['T03', 'T03'],
        ['T07', 'Left of the door'],
        ['T08', 'T08'],
      ],
      'T07 called Left of the door',
      [
        ['T03', 'T03'],
        ['T07', 'T07'],
        ['T08', 'T08'],
      ],
    ]);
  });

  test('an empty text calls it by its tank again', async () => {
    const hand = await benchAtHand();
    hand.bench.acts.nameSize('T07', 'Hall');
    expect(hand.bench.acts.nameSize('T07', ' ')).toBeUndefined();
    expect(heads(hand)[1]).toEqual(['T07', 'T07']);
    await hand.quiet();
    expect(hand.book.line.peek().undo).toBe('Hall called by its tank, T07');
  });

  test.each([
    ['', 'T07: write what it is to be called, such as Left of the door.'],
    ['n'.repeat(41), 'T07: a name has at most 40 letters; this one has 41.'],
    ['T08', 'Another size of this job is called T08 already: choose another name.'],
    ['Porch', 'Another size of this job is called Porch already: choose another name.'],
  ])('%j is no name for it', async (text, sentence) => {
    const hand = await benchAtHand();
    hand.bench.acts.nameSize('T03', 'Porch');
    expect(hand.bench.acts.nameSize('T07', text)).toBe(sentence);
  });

  test('the longest name is taken', async () => {
    const hand = await benchAtHand();
    expect(hand.bench.acts.nameSize('T07', 'n'.repeat(40))).toBeUndefined();
  });
});
