import type { BookContext } from '#renderer/books/book-api.ts';
import { guessColumns } from '#shared-calc/acts/guess-columns.ts';
import { placeRows, type PlacedList } from '#shared-calc/acts/place-list-rows.ts';
import { readPriceList, type ListFault, type PriceList } from '#shared-calc/acts/price-list.ts';
import type { RowChoice } from '#shared-calc/acts/row-choice.ts';
import type { PriceListMap } from '#shared-calc/fields/price-list-map.ts';
import { unitOfGoods } from '#shared-calc/buy/unit-of-goods.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';

/** A list as a person is matching it. */
export interface Matching {
  /** Of its file. */
  readonly name: string;
  readonly text: string;
  /** Empty while nobody has said whose list it is. */
  readonly supplier: string;
  readonly map: PriceListMap;
  /** Columns of the map that were found by what stands in them. */
  readonly isGuessed: boolean;
  /** By row. */
  readonly choices: ReadonlyMap<number, RowChoice>;
}

export interface MatchedList {
  readonly list: PriceList;
  readonly placed: PlacedList;
  /** What is said of the list, with the articles that were matched by hand. */
  readonly map: PriceListMap;
}

/** A list that has just come in, with its columns as far as they can be told. */
export function beginMatching(
  { name, text, supplier }: Pick<Matching, 'name' | 'text' | 'supplier'>,
  { records }: BookContext,
): Matching {
  const remembered = records.supplier.get(supplier)?.priceList;
  const map = guessColumns(text, { remembered }, (code) => unitOfGoods(code, records) !== undefined);
  return { name, text, supplier, map, isGuessed: map.columns !== undefined, choices: new Map() };
}

/** Whose list a text is: of the one supplier whose remembered columns it has. */
export function supplierOf(text: string, { records, workshop, today }: BookContext): string | undefined {
  const fitting = [...records.supplier.values()].filter(({ priceList }) => {
    if (!priceList?.columns) return false;
    return readPriceList(text, { map: { from: today, ...priceList }, workshop }).ok;
  });
  const [only, ...others] = fitting;
  return others.length === 0 ? only?.id : undefined;
}

/** Reads the list as it is matched now. A day for a list that has none is today until another is given. */
export function readMatching(
  matching: Matching,
  { records, workshop, today }: BookContext,
): Result<MatchedList, ListFault> {
  const { text, supplier, choices } = matching;
  const { from: _, ...remembered } = records.supplier.get(supplier)?.priceList ?? {};
  let { map } = matching;
  let list = readPriceList(text, { map, remembered, workshop });
  if (!list.ok && list.fault.kind === 'no-day') {
    map = { ...map, from: today };
    list = readPriceList(text, { map, remembered, workshop });
  }
  if (!list.ok) return failed(list.fault);
  const articles = { ...map.articles, ...chosenArticles(list.value, choices) };
  const placed = placeRows(list.value, { records, supplier, map, remembered, choices });
  return ok({ list: list.value, placed, map: Object.keys(articles).length > 0 ? { ...map, articles } : map });
}

function chosenArticles({ rows }: PriceList, choices: Matching['choices']): Record<string, string> {
  const matched = rows.flatMap(({ row, article }): (readonly [string, string])[] => {
    const { act, material } = choices.get(row) ?? {};
    return act === undefined && material !== undefined && article !== '' ? [[article, material]] : [];
  });
  return Object.fromEntries(matched);
}
