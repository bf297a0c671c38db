import type { TaxClass } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { taxSplit, type ClassTax } from '#shared-calc/trade/price/tax-split.ts';
import type { PriceFault } from './price-fault.ts';

export interface TaxSum {
  readonly taxClass: string;
  readonly label: string;
  readonly share: number;
  /** The class's lines before tax: the base of the tax. */
  readonly netCoins: number;
  readonly coins: number;
}

export interface QuoteTax {
  readonly netCoins: number;
  /** Only the classes that occur in a line, in the order of the rate book. */
  readonly tax: readonly TaxSum[];
  readonly grossCoins: number;
}

interface TaxedLine {
  readonly taxClass: string;
  readonly priceCoins: number;
}

/** Tax of a quote's lines: on the sum of each class, rounded there to the coin; a class without a share has none. */
export function quoteTax(lines: readonly TaxedLine[], classes: readonly TaxClass[]): Result<QuoteTax, PriceFault> {
  const unknown = lines.find((line) => !classes.some((each) => each.id === line.taxClass));
  if (unknown) return failed({ kind: 'no-tax-class', taxClass: unknown.taxClass });
  const rates = new Map(classes.map(({ id, share = 0 }) => [id, share]));
  const split = taxSplit(
    lines.map(({ taxClass, priceCoins }) => ({ taxClass, coins: priceCoins })),
    { rates, included: false },
  );
  if ('refused' in split) return failed({ kind: 'refused', says: split.refused });
  const tax = classes.flatMap((taxClass) => {
    const found = split.classes.find((each) => each.taxClass === taxClass.id);
    return found && taxClass.share !== undefined ? [taxSum(taxClass, found)] : [];
  });
  return ok({ netCoins: split.net, tax, grossCoins: split.gross });
}

function taxSum({ id, label, share = 0 }: TaxClass, { net, tax }: ClassTax): TaxSum {
  return { taxClass: id, label, share, netCoins: net, coins: tax };
}
