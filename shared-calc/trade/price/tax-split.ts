import { roundCoins } from './coin-rounding.ts';
import type { Refusal } from '#shared-calc/trade/first-refusal.ts';
import { listFunction, refused } from '#shared-calc/trade/trade-function.ts';

export interface TaxedLine {
  readonly coins: number;
  readonly taxClass: string;
}

export interface TaxTerms {
  /** Shares by tax class: 0.12 for 12 %. */
  readonly rates: ReadonlyMap<string, number>;
  /** The lines already include their tax. */
  readonly included: boolean;
}

export interface ClassTax {
  readonly taxClass: string;
  readonly net: number;
  readonly tax: number;
}

/** All in coins. */
export interface TaxSplit {
  readonly net: number;
  /** In the order in which the classes first appear. */
  readonly classes: readonly ClassTax[];
  readonly tax: number;
  readonly gross: number;
}

/** Tax on the sum of each class, rounded there, half up to the coin. Refuses a class without a rate. */
export function taxSplit(lines: readonly TaxedLine[], { rates, included }: TaxTerms): TaxSplit | Refusal {
  const wrong = lines.find(({ coins }) => !Number.isSafeInteger(coins));
  if (wrong) return refused(`A line of ${wrong.coins} is not in whole coins.`);
  const classes: ClassTax[] = [];
  for (const [taxClass, sum] of sumsOf(lines)) {
    const rate = rates.get(taxClass);
    if (rate === undefined) return refused(`No tax rate for class ${taxClass}; add one.`);
    if (rate < 0) return refused(`The tax rate of class ${taxClass} cannot be below zero.`);
    classes.push(included ? takeOut(taxClass, sum, rate) : { taxClass, net: sum, tax: roundCoins(sum * rate) });
  }
  const net = classes.reduce((sum, each) => sum + each.net, 0);
  const tax = classes.reduce((sum, each) => sum + each.tax, 0);
  return { net, classes, tax, gross: net + tax };
}

function takeOut(taxClass: string, gross: number, rate: number): ClassTax {
  const tax = roundCoins((gross * rate) / (1 + rate));
  return { taxClass, net: gross - tax, tax };
}

function sumsOf(lines: readonly TaxedLine[]): ReadonlyMap<string, number> {
  const sums = new Map<string, number>();
  for (const { taxClass, coins } of lines) sums.set(taxClass, (sums.get(taxClass) ?? 0) + coins);
  return sums;
}

export const taxSplitEntry = listFunction({
  name: 'TAX_SPLIT',
  title: 'Tax split',
  group: 'price',
  takes: 'priced lines with their tax class, the rates, whether tax is in the prices',
  gives: 'net, tax of each class, gross',
  sum: 'sum of each class x its rate, rounded to the coin; net + taxes',
  help: 'Tax is worked once on the sum of a class, never line by line.',
  examples: [
    { rule: '1,289.25 at 12 %, 165.00 at 4 %', gives: 'tax 154.71 and 6.60, gross 1,615.56' },
    { rule: '112.00 at 12 %, tax in it', gives: 'net 100.00, tax 12.00' },
  ],
  source: 'common practice, no source',
});
