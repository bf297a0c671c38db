import { needAmounts } from '#shared-calc/bench/order-amounts.ts';
import { allBuilds } from '#shared-calc/buy/all-builds.ts';
import { byMaterial } from '#shared-calc/buy/needs.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import type { Job, Records } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import type { JobFault } from './job-fault.ts';
import { keysOf } from './job-sheet.ts';
import { openJob } from './open-sheet.ts';

/** What a job uses of each material that comes in packs, for all its builds, in the material's unit. */
export function jobUses(records: Records, job: Job, on: Day): Result<ReadonlyMap<string, number>, JobFault> {
  const { sheet, bench, pricing } = openJob(records, job, on);
  const needs = needAmounts(bench, keysOf(sheet), pricing.prices);
  if (!needs.ok) return failed({ kind: 'not-worked', job: job.id, fault: needs.fault });
  const uses = new Map<string, number>();
  for (const [material, each] of byMaterial(allBuilds(needs.value), undefined)) {
    if (pricing.prices.goods.get(material)?.sale !== 'packs') continue;
    uses.set(
      material,
      each.reduce((sum, use) => sum + use.amount, 0),
    );
  }
  return ok(uses);
}
