import type { PriceListMap } from '#shared-calc/fields/price-list-map.ts';
import { orderOf, type DateOrder } from '#shared-calc/read/list-days.ts';
import { decimalOf, type ListDecimal } from '#shared-calc/read/list-figures.ts';
import { takeMoneyApart } from '#shared-calc/read/list-money.ts';
import type { Workshop } from '#shared-calc/records/records.ts';

/** How a list writes numbers and days. */
export interface Dialect {
  readonly decimal: ListDecimal;
  readonly dates?: DateOrder;
}

/** Cells of a list. */
export interface DialectCells {
  readonly prices: readonly string[];
  readonly days: readonly string[];
  /** Of a list that the program wrote; empty for others. */
  readonly ownDelimiter: string;
}

/** Dialects by who says them, the nearest first; in the middle stands the list itself. */
interface DialectSources {
  readonly map?: PriceListMap | undefined;
  readonly remembered?: PriceListMap | undefined;
  readonly workshop: Pick<Workshop, 'decimalComma' | 'dateOrder'>;
}

/** The decimal sign of the program's own lists, by their delimiter. */
const ownSigns: ReadonlyMap<string, '.' | ','> = new Map([
  [',', '.'],
  [';', ','],
]);

/** The decimal sign and the order of dates: by the map, by the list itself, by the last list, by the workshop. */
export function findDialect(cells: DialectCells, { map = {}, remembered = {}, workshop }: DialectSources): Dialect {
  const sign = map.decimal ?? signOf(cells) ?? remembered.decimal;
  const dates = map.dates ?? orderOf(cells.days) ?? remembered.dates ?? workshop.dateOrder;
  return { decimal: decimalIn(sign, workshop), ...(dates !== undefined && { dates }) };
}

function decimalIn(sign: '.' | ',' | undefined, { decimalComma }: DialectSources['workshop']): ListDecimal {
  return { sign: sign ?? (decimalComma ? ',' : '.'), isKnown: sign !== undefined };
}

function signOf({ prices, ownDelimiter }: DialectCells): '.' | ',' | undefined {
  return ownSigns.get(ownDelimiter) ?? decimalOf(prices.flatMap((text) => takeMoneyApart(text)?.number ?? []));
}
