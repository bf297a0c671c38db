import type { QuoteSums } from '#shared-calc/price/quote-sums.ts';
import type { Workshop } from '#shared-calc/records/records.ts';
import { coinAmount } from './coin-amount.ts';
import { csvText, type CsvCell } from './csv-text.ts';
import { marginIn, sayEachLack, sumLabel, WHOLE, type QuotePart } from './quote-part.ts';

interface QuoteCsvOptions {
  /** For the builder alone: cost and margin too. */
  readonly inside: boolean;
  /** What the sums wait for, and which of their prices are guesses. */
  readonly part?: QuotePart;
}

/** A quote as CSV for the client: group, price and tax class, then the sums. Cost and margin only if `inside`. */
export function quoteCsv(quote: QuoteSums, workshop: Workshop, { inside, part = WHOLE }: QuoteCsvOptions): string {
  const money = (coins: number) => coinAmount(coins, workshop.coinDecimals);
  const within = (cells: readonly CsvCell[]) => (inside ? cells : []);
  const lines = quote.lines.map((line): CsvCell[] => [
    line.label,
    money(line.priceCoins),
    line.taxClass,
    ...within([money(line.costCoins), marginIn(part, line) ?? '']),
  ]);
  const sum = (label: string, coins: number, taxClass = ''): CsvCell[] => [
    sumLabel(label, part),
    money(coins),
    taxClass,
    ...within(['', '']),
  ];
  return csvText(
    [
      ['item', 'price', 'tax class', ...within(['cost', 'margin'])],
      ...lines,
      sum('Before tax', quote.netCoins),
      ...quote.tax.map((tax) => sum('Tax', tax.coins, tax.taxClass)),
      sum('Price', quote.grossCoins),
      sum('Deposit', quote.depositCoins),
      ...sayEachLack(part).map((says): CsvCell[] => [says, '', '', ...within(['', ''])]),
    ],
    workshop,
  );
}
