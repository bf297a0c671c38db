import type { NeedAmount } from '#shared-calc/buy/needs.ts';
import type { Goods, PriceBook } from '#shared-calc/buy/price-book.ts';
import type { QuoteLine } from '#shared-calc/records/records.ts';

/** A one-off line with a supplier is goods like any other; one without is work or something of the client's. */
export function isBoughtOnce({ supplier }: Pick<QuoteLine, 'supplier'>): boolean {
  return supplier !== undefined;
}

/** What a one-off line asks for, once for its job. */
export function oneOffNeed({ id, group }: QuoteLine): NeedAmount {
  return { line: id, column: '', material: id, group, amount: 1, perJob: true, count: 1 };
}

/** Prices with one-off lines among the goods: each as one piece at its cost. */
export function withOneOffs(prices: PriceBook, lines: readonly QuoteLine[]): PriceBook {
  if (lines.length === 0) return prices;
  const goods = lines.map((line) => [line.id, goodsOf(line, prices.on)] as const);
  return { ...prices, goods: new Map([...prices.goods, ...goods]) };
}

function goodsOf({ id, label, costCoins, supplier }: QuoteLine, from: string): Goods {
  const pack = { id, amount: 1, priceCoins: costCoins, from, old: false };
  const bought = supplier === undefined ? {} : { supplier };
  return { material: id, label, unit: 'each', sale: 'packs', keeps: true, packs: [pack], ...bought };
}
