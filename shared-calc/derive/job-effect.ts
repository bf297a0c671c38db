import { byMaterial } from '#shared-calc/buy/needs.ts';
import { allBuilds } from '#shared-calc/buy/all-builds.ts';
import type { OrderFault } from '#shared-calc/bench/order-sums.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import { ok, type Result } from '#shared-calc/result.ts';
import type { DerivedJob } from './derived.ts';

export interface FromTo {
  readonly from: number;
  readonly to: number;
}

/** What becomes otherwise in a job, money in coins. */
export interface JobEffect {
  readonly needs: readonly (FromTo & { readonly material: string; readonly label: string; readonly unit: string })[];
  readonly cost: FromTo;
  readonly net: FromTo;
  readonly gross: FromTo;
  readonly hours: FromTo;
}

/** The difference between two workings of one job. */
export function jobEffect(before: DerivedJob, after: DerivedJob): Result<JobEffect, OrderFault> {
  const [from, to] = [before.sums(), after.sums()];
  if (!from.ok) return from;
  if (!to.ok) return to;
  const [old, next] = [from.value.quote, to.value.quote];
  return ok({
    needs: needsChanged(before, after),
    cost: { from: old.costCoins, to: next.costCoins },
    net: { from: old.netCoins, to: next.netCoins },
    gross: { from: old.grossCoins, to: next.grossCoins },
    hours: { from: old.hours, to: next.hours },
  });
}

function needsChanged(before: DerivedJob, after: DerivedJob): JobEffect['needs'] {
  const [from, to] = [amountsOf(before), amountsOf(after)];
  return [...new Set([...from.keys(), ...to.keys()])].flatMap((material) => {
    const goods = after.pricing.prices.goods.get(material) ?? before.pricing.prices.goods.get(material);
    const [was, is] = [from.get(material) ?? 0, to.get(material) ?? 0];
    if (Math.abs(is - was) < NOTHING) return [];
    return [{ material, label: goods?.label ?? material, unit: goods?.unit ?? 'each', from: was, to: is }];
  });
}

/** Less is noise of the sum. */
const NOTHING = 1e-9;

function amountsOf({ needs }: DerivedJob): ReadonlyMap<string, number> {
  const worked = needs();
  if (!worked.ok) return new Map();
  return new Map(
    [...byMaterial(allBuilds(worked.value), undefined)].map(([material, each]) => [
      material,
      cleanNoise(each.reduce((sum, { amount }) => sum + amount, 0)),
    ]),
  );
}
