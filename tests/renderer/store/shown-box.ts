import type { BoxView } from '#renderer/bench/view-model.ts';
import type { BenchAtHand } from './book-at-hand.ts';

export function box({ bench }: BenchAtHand, row: string, column: string): BoxView | undefined {
  return bench.view.peek().boxOf(row, column);
}

/** Words, figure, look, source and form of a cell. */
export function shown(hand: BenchAtHand, row: string, column: string): readonly string[] {
  const { said = '', figure = '', look = '', source = '', form = '' } = box(hand, row, column) ?? {};
  return [said, figure, look, source, form];
}

export function rowIds({ bench }: BenchAtHand): readonly string[] {
  return bench.view.peek().rows.map((row) => row.id);
}
