import { describe, expect, test } from 'vitest';
import { benchAtHand, type BenchAtHand } from './book-at-hand.ts';

const heads = ({ bench }: BenchAtHand) => bench.view.peek().columns.map(({ key, label }) => [key, label]);

describe('nameSize', () => {
  test('a size is called by its own name on the bench, and undo calls it by its tank again', async () => {
    const hand = await benchAtHand();
    expect(hand.bench.hands.nameSize('T07', '  Left of  the door ')).toBeUndefined();
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
    hand.bench.hands.nameSize('T07', 'Hall');
    expect(hand.bench.hands.nameSize('T07', ' ')).toBeUndefined();
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
    hand.bench.hands.nameSize('T03', 'Porch');
    expect(hand.bench.hands.nameSize('T07', text)).toBe(sentence);
  });

  test('the longest name is taken', async () => {
    const hand = await benchAtHand();
    expect(hand.bench.hands.nameSize('T07', 'n'.repeat(40))).toBeUndefined();
  });
});
