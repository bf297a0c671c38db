import { recordFields } from '#shared-calc/fields/record-fields.ts';
import type { EntryFault } from '#shared-calc/read/entry-fault.ts';
import { readListNumber, type ListDecimal } from '#shared-calc/read/list-figures.ts';
import { isCurrencyCode, isMarkOf, takeMoneyApart } from '#shared-calc/read/list-money.ts';
import { coinsOf } from '#shared-calc/read/read-money.ts';
import type { Workshop } from '#shared-calc/records/records.ts';
import { failed, type Result } from '#shared-calc/result.ts';

export type ListPriceFault =
  | { readonly kind: 'price-zero' }
  | { readonly kind: 'other-currency'; readonly text: string; readonly currency: string }
  | { readonly kind: 'several-currencies'; readonly text: string; readonly marks: readonly string[] };

type Currency = Pick<Workshop, 'currency' | 'coinDecimals'>;

interface PriceContext {
  readonly decimal: ListDecimal;
  readonly workshop: Currency;
  /** Every mark of another currency in the list. */
  readonly marks: readonly string[];
}

/** The marks of a list's prices that are not the workshop's currency. */
export function foreignMarks(prices: readonly string[], { currency }: Currency): readonly string[] {
  const marks = new Set(prices.map((text) => takeMoneyApart(text)?.mark ?? ''));
  return [...marks].filter((mark) => !isMarkOf(mark, currency));
}

/**
 * Parses a price of a list to whole coins, with its currency before or behind. A workshop whose currency is a word of
 * its own takes any one mark for it; one with a currency of ISO 4217 takes no other.
 */
export function readListPrice(
  text: string,
  { decimal, workshop: { currency, coinDecimals }, marks }: PriceContext,
): Result<number, ListPriceFault | EntryFault> {
  const name = recordFields.packPrice.priceCoins.heading;
  if (text === '') return failed({ kind: 'empty', name, wants: 'figure' });
  const money = takeMoneyApart(text);
  if (!money) return failed({ kind: 'not-money', name, text });
  if (marks.includes(money.mark)) {
    if (isCurrencyCode(currency)) return failed({ kind: 'other-currency', text, currency });
    if (marks.length > 1) return failed({ kind: 'several-currencies', text, marks });
  }
  const number = readListNumber(money.number, decimal);
  if (!number.ok) {
    const { fault } = number;
    return failed(fault.kind === 'not-a-figure' ? { kind: 'not-money', name, text } : { ...fault, name });
  }
  if (number.value === 0) return failed({ kind: 'price-zero' });
  return coinsOf(number.value, coinDecimals, { name, text });
}
