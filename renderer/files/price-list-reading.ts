import type { BookContext } from '#renderer/books/book-api.ts';
import { placeRows, type PlacedList, type RowChoice } from '#shared-calc/acts/place-list-rows.ts';
import { readPriceList, type ListFault, type PriceList } from '#shared-calc/acts/price-list.ts';
import type { PriceListMap } from '#shared-calc/fields/price-list-map.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';

/** A list as a person is matching it. */
export interface Matching {
  readonly name: string;
  readonly text: string;
  readonly supplier: string;
  readonly map: PriceListMap;
  readonly choices: ReadonlyMap<number, RowChoice>;
}

export interface MatchedList {
  readonly list: PriceList;
  readonly placed: PlacedList;
  /** What is said of the list, with the articles that were matched by hand. */
  readonly map: PriceListMap;
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
    const choice = choices.get(row);
    return choice?.act === 'take' && article !== '' ? [[article, choice.material]] : [];
  });
  return Object.fromEntries(matched);
}

/** `7 rows give 5 prices, 1 new pack and 1 new material; 2 are in the book already.` */
export function sayTaken({ taken, left }: PlacedList): string {
  const there = taken.filter(({ isThere }) => isThere).length;
  const materials = new Set(taken.flatMap(({ material, label }) => (material === undefined ? [label] : []))).size;
  const packs = taken.filter(({ known, material }) => !known && material !== undefined).length;
  const prices = taken.filter(({ known, isThere }) => known && !isThere).length;
  const parts = [count(prices, 'price'), count(packs, 'new pack'), count(materials, 'new material')].filter(
    (part) => !part.startsWith('0 '),
  );
  const given = parts.length === 0 ? 'nothing new' : parts.join(', ').replace(/, ([^,]*)$/, ' and $1');
  const already = there === 0 ? '' : `; ${there} in the book already`;
  const out = left.length === 0 ? '' : `; ${left.length} left`;
  return `${count(taken.length, 'row')} ${taken.length === 1 ? 'gives' : 'give'} ${given}${already}${out}.`;
}

function count(many: number, what: string): string {
  return `${many} ${what}${many === 1 ? '' : 's'}`;
}
