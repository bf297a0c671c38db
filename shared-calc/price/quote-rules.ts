import type { Margin, Records, TaxClass, Workshop } from '#shared-calc/records/records.ts';
import { hourCoins, overBuilder, type PaidRate } from './hour-coins.ts';

/** The house figures that turn costs into a quote. */
export interface QuoteRules {
  readonly margins: readonly Margin[];
  readonly taxClasses: readonly TaxClass[];
  /** One hour of a builder and of overhead. */
  readonly hourCoins: number;
  /** Rates of other people's hours, by their id. */
  readonly paid: ReadonlyMap<string, PaidRate>;
  readonly depositShare: number;
  readonly depositStepCoins: number;
  /** These five are 0 at first and then have no effect. */
  readonly contingencyShare: number;
  readonly warrantyShare: number;
  readonly plantLossShare: number;
  readonly discountShare: number;
  readonly priceStepCoins: number;
}

/** The group of the hours charged. */
export const WORK_GROUP = 'work';
/** The group that the plant loss reserve applies to. */
export const PLANTS_GROUP = 'plants';
/** Groups of goods that are cut or grown for one job: a deposit covers at least their cost. */
export const MADE_TO_ORDER: readonly string[] = ['cover', PLANTS_GROUP];

/** The rules of a workshop from its book; margins in their own order. */
export function quoteRules(workshop: Workshop, rates: Pick<Records, 'margin' | 'taxClass' | 'rate'>): QuoteRules {
  const { depositShare, depositStepCoins, contingencyShare, warrantyShare } = workshop;
  const { plantLossShare, discountShare, priceStepCoins } = workshop;
  return {
    margins: [...rates.margin.values()].toSorted((a, b) => a.order - b.order || (a.id < b.id ? -1 : 1)),
    taxClasses: [...rates.taxClass.values()],
    hourCoins: hourCoins(rates),
    paid: overBuilder(rates),
    depositShare,
    depositStepCoins,
    contingencyShare,
    warrantyShare,
    plantLossShare,
    discountShare,
    priceStepCoins,
  };
}
