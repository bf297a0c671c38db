import type { Rate, Records } from '#shared-calc/records/records.ts';
import { rateNotGiven, type NotGiven } from './not-given.ts';

/** Whose hour it is where a line of work names nobody. */
export const BUILDER = 'R-builder';
export const OVERHEAD = 'R-overhead';

/** The cost of an hour of a builder and of overhead. */
export interface HourCost {
  /** Of what is given, in coins. */
  readonly coins: number;
  /** The builder's part of it. */
  readonly builderCoins: number;
  readonly notGiven: readonly NotGiven[];
}

/** A book without a rate for overhead has none; without one for the builder, its hour is not given. */
export function hourCost({ rate }: Pick<Records, 'rate'>): HourCost {
  const rates = [rate.get(BUILDER) ?? { id: BUILDER, label: 'Builder', coins: undefined }, rate.get(OVERHEAD)];
  const asked = rates.filter((each) => each !== undefined);
  return {
    coins: asked.reduce((sum, { coins = 0 }) => sum + coins, 0),
    builderCoins: rate.get(BUILDER)?.coins ?? 0,
    notGiven: asked.filter(({ coins }) => coins === undefined).map(rateNotGiven),
  };
}

/** What each person's hour costs beside the builder's. */
export function overBuilder({ rate }: Pick<Records, 'rate'>): ReadonlyMap<string, PaidRate> {
  const paid = [...rate.values()].filter(({ id, per }) => per === 'h' && id !== BUILDER);
  const builder = rate.get(BUILDER)?.coins ?? 0;
  return new Map(paid.map((each) => [each.id, paidRate(each, builder)]));
}

export interface PaidRate {
  readonly label: string;
  /** How much the hour costs more than the builder's, in coins; below 0: less. Left out: not given. */
  readonly overCoins?: number;
}

function paidRate({ label, coins }: Rate, builder: number): PaidRate {
  return coins === undefined ? { label } : { label, overCoins: coins - builder };
}
