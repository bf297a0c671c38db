import type { Bench } from '#shared-calc/bench/open-bench.ts';
import { workAmounts, type NoAmount } from '#shared-calc/bench/order-amounts.ts';
import { allBuilds } from '#shared-calc/buy/all-builds.ts';
import { ok, type Result } from '#shared-calc/result.ts';
import type { PrepStepName } from './prep-steps.ts';

export type TimedStep = PrepStepName | 'handover';

/** Tasks done on another day than the build; survey and quote are done before a job has dates. */
const stepOfTask: Readonly<Record<string, TimedStep | 'over'>> = {
  L02: 'panel',
  L06: 'media',
  L12: 'leaves',
  L17: 'handover',
  J3: 'handover',
  J4: 'handover',
  J1: 'over',
  J2: 'over',
};

/** Attended minutes of an order by the step on whose day they fall; tasks without a step belong to the build. */
export function stepMinutes(
  bench: Bench,
  columns: readonly string[],
): Result<ReadonlyMap<TimedStep, number>, NoAmount> {
  const work = workAmounts(bench, columns);
  if (!work.ok) return work;
  const minutes = new Map<TimedStep, number>();
  for (const { line, column, amount } of allBuilds(work.value)) {
    const step = stepOfTask[bench.box(column, line).line.task ?? ''] ?? 'build';
    if (step !== 'over') minutes.set(step, (minutes.get(step) ?? 0) + amount);
  }
  return ok(minutes);
}
