import { groupCosts } from '#shared-calc/buy/group-costs.ts';
import type { Guess, Missing } from '#shared-calc/buy/missing.ts';
import { needsOf, type Buying, type NeedsList } from '#shared-calc/buy/needs.ts';
import type { BuyFault } from '#shared-calc/buy/buy-fault.ts';
import type { PriceBook } from '#shared-calc/buy/price-book.ts';
import { NO_STOCK, type Stock } from '#shared-calc/buy/stock.ts';
import type { PriceFault } from '#shared-calc/price/price-fault.ts';
import type { QuoteRules } from '#shared-calc/price/quote-rules.ts';
import { quoteSums, type QuoteFigures, type QuoteSums } from '#shared-calc/price/quote-sums.ts';
import { minutesOf } from '#shared-calc/price/work-hours.ts';
import type { Job } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { missingMeasures } from './missing-measures.ts';
import type { Bench } from './open-bench.ts';
import { knownNeeds, knownWork, type NoAmount } from './order-amounts.ts';

/** Everything that a sum waits for, all at once. */
export interface FiguresMissing {
  readonly kind: 'figures-not-given';
  readonly missing: readonly Missing[];
}

export type OrderFault = NoAmount | BuyFault | PriceFault | FiguresMissing;

/** What an order is bought and priced with. */
export interface Pricing {
  readonly prices: PriceBook;
  readonly rules: QuoteRules;
  readonly basis: Job['basis'];
  readonly stock?: Stock;
  /** What there is of a material, in place of the stock. */
  readonly supply?: Buying['supply'];
  readonly materials?: readonly string[];
  readonly oneOffs?: QuoteFigures['oneOffs'];
}

/** What is known of the combined needs of some columns of a bench, and what is missing. */
export function orderNeeds(
  bench: Bench,
  columns: readonly string[],
  pricing: Pick<Pricing, 'prices' | 'stock' | 'materials' | 'supply'>,
): Result<NeedsList, NoAmount | BuyFault> {
  const { prices, stock = NO_STOCK, materials, supply } = pricing;
  const { amounts, without: all } = knownNeeds(bench, columns, prices);
  const without = all.filter(({ line: { material = '' } }) => !materials || materials.includes(material));
  const measures = missingMeasures(bench, without);
  if (!measures.ok) return measures;
  const list = needsOf(amounts, { prices, stock, materials, ...(supply && { supply }) });
  return list.ok ? ok({ ...list.value, missing: [...measures.value, ...list.value.missing] }) : list;
}

export interface OrderSums {
  readonly needs: NeedsList;
  readonly quote: QuoteSums;
}

/** Sums as far as they are known: while anything is missing, each is at least what it says. */
export interface KnownSums extends OrderSums {
  readonly missing: readonly Missing[];
  readonly guesses: readonly Guess[];
  /** Every line of work has its minutes. */
  readonly hoursKnown: boolean;
}

/** Cost, price, tax, deposit and hours of some columns together, as one job; a fault while anything is missing. */
export function orderSums(bench: Bench, columns: readonly string[], pricing: Pricing): Result<OrderSums, OrderFault> {
  return wholeSums(knownSums(bench, columns, pricing));
}

/** Sums of which nothing is missing, or everything that is. */
export function wholeSums(sums: Result<KnownSums, OrderFault>): Result<OrderSums, OrderFault> {
  if (!sums.ok || sums.value.missing.length === 0) return sums;
  return failed({ kind: 'figures-not-given', missing: sums.value.missing });
}

/** The same as far as it is known. */
export function knownSums(bench: Bench, columns: readonly string[], pricing: Pricing): Result<KnownSums, OrderFault> {
  const needs = orderNeeds(bench, columns, pricing);
  if (!needs.ok) return needs;
  const work = knownWork(bench, columns);
  const { needs: all, missing: unpriced, guesses } = needs.value;
  const measures = missingMeasures(bench, work.without);
  if (!measures.ok) return measures;
  const before = [...measures.value, ...unpriced];
  const figures: QuoteFigures = {
    groupCosts: groupCosts(all, pricing.basis),
    ...minutesOf(work.amounts),
    isPart: before.length > 0,
    openGroups: all.filter(({ lacks }) => lacks).map(({ group }) => group),
    ...(pricing.oneOffs && { oneOffs: pricing.oneOffs }),
  };
  const quote = quoteSums(figures, pricing.rules);
  if (!quote.ok) return quote;
  return ok({
    needs: needs.value,
    quote: quote.value.sums,
    missing: eachOnce([...before, ...quote.value.missing]),
    guesses,
    hoursKnown: work.without.length === 0,
  });
}

function eachOnce(missing: readonly Missing[]): readonly Missing[] {
  return [...new Map(missing.map((each) => [JSON.stringify([each.what, each.of, each.label]), each])).values()];
}
