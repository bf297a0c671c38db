import { describe, expect, test } from 'vitest';
import { money } from '#renderer/store/foot-boxes.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import { writeNumber } from '#shared-calc/quantity/write-figure.ts';
import { DEMO_DAY, demoRecords } from '#tests/demo-bench.ts';
import { benchAtHand, type BenchAtHand } from './book-at-hand.ts';

/** What stands behind the names of the sums: `at least 604.20`. */
function totals({ bench }: BenchAtHand): readonly (readonly [string, string])[] {
  return bench.view
    .peek()
    .foot.map(({ id, total }) => [id, [total?.short, total?.figure].filter((word) => word !== '').join(' ')]);
}

async function rested(records = demoRecords()): Promise<BenchAtHand> {
  const hand = await benchAtHand(records);
  hand.bench.view.peek();
  hand.clock.rest();
  return hand;
}

/** The sums of the whole job, as its quote has them. */
function asQuoted({ bench, book }: BenchAtHand) {
  const job = derive(book.records.peek(), DEMO_DAY).job(bench.opened.peek()?.job ?? '');
  const sums = job?.known();
  if (!sums?.ok) throw new Error('no sums');
  const { display } = bench;
  const { quote } = sums.value;
  return [
    ['hours', writeNumber(quote.hours, 2, display.peek())],
    ...(['cost', 'net', 'gross', 'deposit'] as const).map((id) => [id, money(quote[`${id}Coins`], display.peek())]),
  ];
}

describe('the totals of a job', () => {
  test('are those of its quote, not the sum of the sizes, and each size counts as often as it is built', async () => {
    const hand = await rested();
    hand.bench.acts.setCount('T07', 3);
    hand.bench.view.peek();
    hand.clock.rest();
    const shown = new Map(totals(hand));
    for (const [id = '', figure] of asQuoted(hand)) expect([id, shown.get(id)]).toEqual([id, figure]);
    const mass = (column: string) => Number(hand.bench.view.peek().footOf('mass', column).figure);
    expect(Number(shown.get('mass'))).toBeCloseTo(mass('T03') + 3 * mass('T07') + mass('T08'), -1);
  });

  test('stay as they are in the frame of an edit and follow after it', async () => {
    const hand = await rested();
    const before = totals(hand);
    hand.bench.acts.write([{ row: 'litter', column: 'T07', text: '60 mm' }]);
    expect(totals(hand)).toEqual(before);
    hand.clock.rest();
    expect(totals(hand)).not.toEqual(before);
    const shown = new Map(totals(hand));
    for (const [id = '', figure] of asQuoted(hand)) expect([id, shown.get(id)]).toEqual([id, figure]);
  });

  test('are at least what is known, and say how much is missing; hours wait for no price', async () => {
    const shown = new Map(totals(await rested({ ...demoRecords(), packPrice: new Map() })));
    expect(shown.get('hours')).toMatch(/^\d+\.\d\d$/);
    expect(shown.get('gross')).toMatch(/^at least \d/);
    expect(shown.get('flags')).toMatch(/^\d+ prices missing$/);
  });

  test('of a bench that was left meanwhile are not worked', async () => {
    const hand = await rested();
    hand.bench.acts.write([{ row: 'litter', column: 'T07', text: '60 mm' }]);
    hand.bench.view.peek();
    hand.bench.close();
    expect(() => hand.clock.rest()).not.toThrow();
  });

  test('a job of one build has none', async () => {
    const hand = await rested();
    for (const size of ['T03', 'T08']) hand.bench.acts.putAway(size);
    hand.bench.view.peek();
    hand.clock.rest();
    expect(hand.bench.view.peek().foot.some(({ total }) => total)).toBe(false);
  });
});
