import type { Job } from '#shared-calc/records/records.ts';
import type { MaterialNeed } from './material-need.ts';

/** Cost of each quote group in coins, by the used or by the packs basis. */
export function groupCosts(needs: readonly MaterialNeed[], basis: Job['basis']): ReadonlyMap<string, number> {
  const costs = new Map<string, number>();
  for (const share of needs.flatMap((need) => need.byGroup)) {
    const coins = basis === 'packs' ? share.packsCoins : share.costCoins;
    costs.set(share.group, (costs.get(share.group) ?? 0) + coins);
  }
  return costs;
}
