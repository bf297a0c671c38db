import type { Records } from '#shared-calc/records/records.ts';

/** The cost of a builder's hour including overhead, in coins. */
export function hourCoins(records: Pick<Records, 'rate'>): number {
  return (records.rate.get('R-builder')?.coins ?? 0) + (records.rate.get('R-overhead')?.coins ?? 0);
}
