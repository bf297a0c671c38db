import type { Margin, Records, TaxClass, Workshop } from '#shared-calc/records/records.ts';
import { hourCost, overBuilder, type HourCost, type PaidRate } from './hour-coins.ts';

/** The house figures that turn costs into a quote. */
export interface QuoteRules {
  readonly margins: readonly Margin[];
  readonly taxClasses: readonly TaxClass[];
  readonly hour: HourCost;
  /** Rates of other people's hours, by their id. */
  readonly paid: ReadonlyMap<string, PaidRate>;
  /** Left out: not given yet, as of the three shares below. */
  readonly depositShare?: number | undefined;
  /** Left out: a deposit is not rounded. */
  readonly depositStepCoins?: number | undefined;
  readonly contingencyShare?: number | undefined;
  readonly warrantyShare?: number | undefined;
  readonly plantLossShare?: number | undefined;
  /** These two have no effect at 0. */
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
    hour: hourCost(rates),
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
