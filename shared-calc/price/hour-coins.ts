import type { Rate, Records } from '#shared-calc/records/records.ts';

/** Whose hour it is where a line of work names nobody. */
export const BUILDER = 'R-builder';

/** The cost of a builder's hour including overhead, in coins. */
export function hourCoins({ rate }: Pick<Records, 'rate'>): number {
  return coinsOf(rate, BUILDER) + coinsOf(rate, 'R-overhead');
}

/** By how much each person's hour costs more than the builder's, in coins; below 0: less. */
export function overBuilder({ rate }: Pick<Records, 'rate'>): ReadonlyMap<string, PaidRate> {
  const paid = [...rate.values()].filter(({ id, per }) => per === 'h' && id !== BUILDER);
  const builder = coinsOf(rate, BUILDER);
  return new Map(paid.map(({ id, label, coins }) => [id, { label, overCoins: coins - builder }]));
}

export interface PaidRate {
  readonly label: string;
  readonly overCoins: number;
}

function coinsOf(rates: ReadonlyMap<string, Rate>, id: string): number {
  return rates.get(id)?.coins ?? 0;
}
