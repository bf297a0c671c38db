import { describe, expect, test } from 'vitest';
import { benchAtHand, type BenchAtHand } from './book-at-hand.ts';
import { shown } from './shown-box.ts';

async function written(text: string, hand?: BenchAtHand): Promise<BenchAtHand> {
  const bench = hand ?? (await benchAtHand());
  // The foot shows the price before the edit.
  for (const column of ['T03', 'T07', 'T08']) bench.bench.view.peek().footOf('gross', column);
  bench.bench.acts.write([{ row: 'litter', column: 'T03', text }]);
  bench.clock.rest();
  return bench;
}

const said = ({ book }: BenchAtHand) => book.line.peek().moved ?? '';

describe('what an edit of the bench moved', () => {
  test('is told in one line with its figures, its price and what does not hold any more', async () => {
    const hand = await benchAtHand();
    const before = shown(hand, 'litter_dry', 'T03');
    await written('60', hand);
    expect(shown(hand, 'litter_dry', 'T03')).not.toEqual(before);
    expect(said(hand)).toMatch(/^Litter depth T03 60\smm: \d+ figures moved, price [\d,.]+, up [\d.]+; new /);
    expect(said(hand)).toContain('dam');
  });

  test('says the price where other sizes are in sight, too', async () => {
    const hand = await benchAtHand();
    for (const column of ['T03', 'T07', 'T08']) hand.bench.view.peek().boxOf('litter', column);
    await written('60', hand);
    expect(said(hand)).toContain(', price ');
  });

  test('names a check that may not have held before and fails now', async () => {
    const hand = await benchAtHand();
    const flags = () =>
      hand.bench.view
        .peek()
        .footOf('flags', 'T03')
        .flags.map(({ says }) => says);
    hand.bench.acts.write([{ row: 'soil_rise', column: 'T03', text: '7' }]);
    expect(flags()).not.toContain('1 stop');
    hand.bench.acts.write([{ row: 'soil_rise', column: 'T03', text: '90' }]);
    hand.clock.rest();
    expect(flags()).toContain('1 stop');
    expect(said(hand)).toContain('; new stop: ');
  });

  test('marks the cells that are others now, not the one that was written, and of no other size', async () => {
    const hand = await written('60');
    const cells = hand.bench.moved.peek();
    expect([...cells.keys()]).toEqual(['T03']);
    expect(cells.get('T03')?.has('litter_dry')).toBe(true);
    expect(cells.get('T03')?.has('litter')).toBe(false);
    expect(cells.get('T03')?.has('drainage')).toBe(false);
    expect(said(hand)).toContain(`: ${cells.get('T03')?.size} figures moved`);
  });

  test('is walked from cell to cell, round and back, and opens a closed section', async () => {
    const hand = await written('60');
    const count = hand.bench.moved.peek().get('T03')?.size ?? 0;
    const walked = Array.from({ length: count + 1 }, () => {
      const place = hand.bench.nextMoved(false);
      hand.bench.acts.choose(place);
      return place?.row ?? '';
    });
    expect(new Set(walked).size).toBe(count);
    expect(walked.at(-1)).toBe(walked[0]);
    expect(hand.bench.view.peek().rows.some(({ id }) => id === walked[0])).toBe(true);
    expect(hand.bench.nextMoved(true)?.row).toBe(walked.at(-2));
  });

  test('stays until the next edit, which says its own', async () => {
    const hand = await written('60');
    const first = said(hand);
    await written('61', hand);
    expect(said(hand)).toMatch(/^Litter depth T03 61\smm: /);
    expect(said(hand)).not.toBe(first);
    hand.bench.acts.write([{ row: 'litter_decay', column: 'T07', text: '1 each/yr' }]);
    hand.clock.rest();
    expect(said(hand)).toMatch(/^Decay of the litter T07 /);
    expect(hand.bench.moved.peek().has('T03')).toBe(false);
  });

  test('an edit of something else on the page leaves no mark', async () => {
    const hand = await written('60');
    const [supplier] = hand.book.records.peek().supplier.values();
    if (supplier) hand.book.doAct('put', { kind: 'supplier', record: { ...supplier, note: 'Rings twice.' } });
    hand.clock.rest();
    expect([said(hand), hand.bench.moved.peek().size]).toEqual(['', 0]);
  });
});
