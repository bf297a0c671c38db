import { writeNumber } from '#shared-calc/quantity/write-figure.ts';
import type { QuoteSums } from '#shared-calc/price/quote-sums.ts';
import type { FigureTable } from './curve-spec.ts';

/** One group's price: its cost to us, and the margin. */
export interface MoneyBar {
  readonly name: string;
  /** Shares of the dearest bar, 0 to 1. */
  readonly cost: number;
  readonly margin: number;
  /** The price as text. */
  readonly price: string;
}

export interface MoneyBarsSpec {
  readonly title: string;
  readonly under: string;
  readonly label: string;
  readonly bars: readonly MoneyBar[];
  readonly table: FigureTable;
}

/** How money is written here, and of what. */
export interface MoneyWords {
  readonly currency: string;
  readonly decimalComma: boolean;
  readonly money: (coins: number) => string;
}

/** The lines of a quote before tax, the dearest first; nothing while it has no price. */
export function moneyBarsSpec({ lines, netCoins, costCoins }: QuoteSums, words: MoneyWords): MoneyBarsSpec | undefined {
  const { currency, money } = words;
  const sorted = lines.filter(({ priceCoins }) => priceCoins > 0).toSorted((a, b) => b.priceCoins - a.priceCoins);
  const [first] = sorted;
  if (!first || netCoins <= 0) return undefined;
  const shareOf = (coins: number) => `${writeNumber((coins / netCoins) * 100, 0, words)} %`;
  return {
    title: `${first.label}: ${shareOf(first.priceCoins)} of the price`,
    under: `${money(netCoins)} ${currency} before tax, of which ${money(costCoins)} is cost`,
    label: `Price before tax by group: ${sorted.map(({ label, priceCoins }) => `${label} ${money(priceCoins)}`).join(', ')}`,
    bars: sorted.map(({ label, costCoins: cost, priceCoins }) => ({
      name: label,
      // A group sold below cost has no margin to show.
      cost: Math.min(cost, priceCoins) / first.priceCoins,
      margin: Math.max(0, priceCoins - cost) / first.priceCoins,
      price: money(priceCoins),
    })),
    table: {
      headings: ['group', `cost, ${currency}`, `margin, ${currency}`, `price, ${currency}`, 'of the price'],
      rows: sorted.map(({ label, costCoins: cost, priceCoins }) => [
        label,
        money(cost),
        money(priceCoins - cost),
        money(priceCoins),
        shareOf(priceCoins),
      ]),
    },
  };
}
