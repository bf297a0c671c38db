import { groupCosts } from '#shared-calc/buy/group-costs.ts';
import { needsOf, type Buying, type NeedsList } from '#shared-calc/buy/needs.ts';
import type { BuyFault } from '#shared-calc/buy/buy-fault.ts';
import type { PriceBook } from '#shared-calc/buy/price-book.ts';
import { NO_STOCK, type Stock } from '#shared-calc/buy/stock.ts';
import type { PriceFault } from '#shared-calc/price/price-fault.ts';
import type { QuoteRules } from '#shared-calc/price/quote-rules.ts';
import { quoteSums, type QuoteFigures, type QuoteSums } from '#shared-calc/price/quote-sums.ts';
import { minutesOf } from '#shared-calc/price/work-hours.ts';
import type { Job } from '#shared-calc/records/records.ts';
import { ok, type Result } from '#shared-calc/result.ts';
import type { Bench } from './open-bench.ts';
import { needAmounts, workAmounts, type NoAmount } from './order-amounts.ts';

export type OrderFault = NoAmount | BuyFault | PriceFault;

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

/** The combined needs list of some columns of a bench. */
export function orderNeeds(
  bench: Bench,
  columns: readonly string[],
  pricing: Pick<Pricing, 'prices' | 'stock' | 'materials' | 'supply'>,
): Result<NeedsList, NoAmount | BuyFault> {
  const amounts = needAmounts(bench, columns, pricing.prices);
  if (!amounts.ok) return amounts;
  const { prices, stock = NO_STOCK, materials, supply } = pricing;
  return needsOf(amounts.value, { prices, stock, materials, ...(supply && { supply }) });
}

export interface OrderSums {
  readonly needs: NeedsList;
  readonly quote: QuoteSums;
}

/** Cost, price, tax, deposit and hours of some columns together, as one job. */
export function orderSums(bench: Bench, columns: readonly string[], pricing: Pricing): Result<OrderSums, OrderFault> {
  const needs = orderNeeds(bench, columns, pricing);
  if (!needs.ok) return needs;
  const work = workAmounts(bench, columns);
  if (!work.ok) return work;
  const figures: QuoteFigures = {
    groupCosts: groupCosts(needs.value.needs, pricing.basis),
    ...minutesOf(work.value),
    ...(pricing.oneOffs && { oneOffs: pricing.oneOffs }),
  };
  const quote = quoteSums(figures, pricing.rules);
  return quote.ok ? ok({ needs: needs.value, quote: quote.value }) : quote;
}
