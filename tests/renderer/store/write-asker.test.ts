import { describe, expect, test } from 'vitest';
import { changedBoxes } from '#renderer/places/quotes/changed-boxes.ts';
import { issued, libraryJob } from '#tests/shared-calc/jobs/demo-jobs.ts';
import { benchAtHand, type BenchAtHand } from './book-at-hand.ts';

const askers = ({ book }: BenchAtHand) => [...book.records.peek().localValue.values()].map(({ by }) => by);
const shownAsked = ({ bench }: BenchAtHand) => bench.panel.peek()?.house?.asked;

async function gapWritten(): Promise<BenchAtHand> {
  const hand = await benchAtHand();
  hand.bench.acts.write([{ row: 'drain_gap', column: 'T08', text: '15 mm' }]);
  hand.bench.acts.choose({ row: 'drain_gap', column: 'T08' });
  return hand;
}

describe('writeAsker', () => {
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
    expect(hand.bench.hands.writeAsker({ row: 'litter', column: 'T03' }, 'client')).toBe(
      'Only a local value has somebody who asked for it: write one first.',
    );
  });

  test('the next quote tells it as the wish of the client', async () => {
    const first = issued(libraryJob(), 'A');
    const hand = await benchAtHand(first.records);
    hand.bench.lay('J02');
    hand.bench.acts.write([{ row: 'litter', column: 'T05', text: '20 mm' }]);
    hand.bench.hands.writeAsker({ row: 'litter', column: 'T05' }, 'client');
    expect(changedBoxes(first.body, issued(hand.book.records.peek(), 'B').body)).toEqual([
      { what: 'Litter depth of T05', from: 'as the house', to: '20 mm', by: 'client' },
    ]);
  });
});
