import { needAmounts } from '#shared-calc/bench/order-amounts.ts';
import { shoppingRun, type ShoppingRun } from '#shared-calc/buy/shopping-run.ts';
import { keysOf } from '#shared-calc/jobs/job-sheet.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import type { PaperFault, PaperInput } from './paper-input.ts';

/** A job uses the Store first; an order of sizes is bought in full, compared with buying each size alone. */
export function runOf({ derived, sheet, bench, pricing }: PaperInput): Result<ShoppingRun, PaperFault> {
  if (sheet.job) {
    const run = derived.run({ jobs: [sheet.job.id] });
    return run.ok ? ok(run.value.run) : failed({ kind: 'job', fault: run.fault });
  }
  const parts = [];
  for (const key of keysOf(sheet)) {
    const needs = needAmounts(bench, [key], pricing.prices);
    if (!needs.ok) return failed({ kind: 'order', fault: needs.fault });
    parts.push({ id: key, job: 'order', needs: needs.value });
  }
  const run = shoppingRun(parts, { prices: pricing.prices, stock: new Map(), materials: undefined });
  return run.ok ? run : failed({ kind: 'order', fault: run.fault });
}
