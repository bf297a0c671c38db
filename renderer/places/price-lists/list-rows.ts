import type { BookContext } from '#renderer/books/book-api.ts';
import type { BookRow } from '#renderer/books/book-table.ts';
import type { ListRowFault, PlacedRow } from '#shared-calc/acts/place-list-rows.ts';
import type { ListRow } from '#shared-calc/acts/price-list.ts';
import type { RowChoice } from '#shared-calc/acts/row-choice.ts';
import { goodsSuggester, type NamedGoods } from '#shared-calc/acts/suggest-goods.ts';
import type { MatchedList, Matching } from './read-matching.ts';

/** A row of the list with what becomes of it. */
export interface ShownRow extends BookRow {
  readonly row: ListRow;
  /** What it gives the book; absent if it is left. */
  readonly placed?: PlacedRow;
  readonly left?: ListRowFault;
  readonly choice?: RowChoice;
  /** Goods with like words, where it is not known what it is. */
  readonly suggested?: NamedGoods;
  /** Everything that it may be. */
  readonly goods: readonly NamedGoods[];
}

export function goodsOf({ records: { material, tank, plant } }: Pick<BookContext, 'records'>): readonly NamedGoods[] {
  return [...material.values(), ...tank.values(), ...[...plant.values()].map(({ id, name }) => ({ id, label: name }))];
}

export function shownRows(
  { list, placed }: MatchedList,
  choices: Matching['choices'],
  goods: readonly NamedGoods[],
): readonly ShownRow[] {
  const suggest = goodsSuggester(goods);
  const taken = new Map(placed.taken.map((each) => [each.row, each]));
  const left = new Map(placed.left.map((each) => [each.row, each.fault]));
  return list.rows.map((row) => {
    const [give, fault, choice] = [taken.get(row.row), left.get(row.row), choices.get(row.row)];
    const suggested = fault && isUnknown(fault) ? suggest(row.label) : undefined;
    return {
      id: `row ${row.row}`,
      row,
      goods,
      ...(give && { placed: give }),
      ...(fault && { left: fault }),
      ...(choice && { choice }),
      ...(suggested && { suggested }),
    };
  });
}

/** It is not known what goods it is. */
export function isUnknown({ kind }: ListRowFault): boolean {
  return kind === 'no-article' || kind === 'unknown-article' || kind === 'unknown-material';
}
