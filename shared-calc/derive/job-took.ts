import { workAmounts } from '#shared-calc/bench/order-amounts.ts';
import type { Bench } from '#shared-calc/bench/open-bench.ts';
import { allBuilds } from '#shared-calc/buy/all-builds.ts';
import { lineLabel } from '#shared-calc/recipe/line-label.ts';
import { fromBase, unitOf } from '#shared-calc/quantity/unit.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import type { Actual, Line } from '#shared-calc/records/records.ts';
import type { Derived, DerivedJob } from './derived.ts';

/** Plants that died: not a line of a recipe, but recorded with its lines. */
export const PLANTS_LOST = 'plants_lost';

/** One quantity that a job used: the plan for all its builds, and what was recorded. */
export interface TookRow {
  readonly line: string;
  readonly label: string;
  readonly unit: string;
  readonly planned: number | undefined;
  readonly actual: Actual | undefined;
}

export interface JobTook {
  readonly minutes: readonly TookRow[];
  readonly goods: readonly TookRow[];
  readonly after: readonly TookRow[];
}

/**
 * The plan of a job by line: the sum over all builds in the line's unit; the mean for a figure that does not add up.
 */
export type Planned = ReadonlyMap<string, number>;

export function plannedOfJob({ bench, keys, needs: needsOf }: DerivedJob): Planned {
  const planned = new Map<string, number>();
  const work = workAmounts(bench, keys);
  const needs = needsOf();
  const add = (line: string, amount: number) => planned.set(line, (planned.get(line) ?? 0) + amount);
  if (work.ok) for (const { line, amount } of allBuilds(work.value)) add(line, amount);
  if (needs.ok) for (const { line, amount } of allBuilds(needs.value)) add(line, amount);
  for (const line of bench.input().lines.filter(({ role }) => role === 'worked' || role === 'given')) {
    const mean = meanOf(bench, line);
    if (mean !== undefined) planned.set(line.name, mean);
  }
  return planned;
}

function meanOf(bench: Bench, line: Line): number | undefined {
  let sum = 0;
  let builds = 0;
  for (const { key, count } of bench.input().columns) {
    const { value } = bench.box(key, line.name);
    if (typeof value !== 'number') return undefined;
    sum += fromBase(value, unitOf(line.unit)) * count;
    builds += count;
  }
  return builds === 0 ? undefined : cleanNoise(sum / builds);
}

/** What a job used, row by row: minutes of its tasks, materials, and what was seen after the handover. */
export function jobTook({ records }: Derived, worked: DerivedJob): JobTook {
  const { job, bench } = worked;
  const { lines } = bench.input();
  const planned = plannedOfJob(worked);
  const actuals = [...records.actual.values()].filter((each) => each.job === job.id && each.size === undefined);
  const rowOf = (line: Line): TookRow => ({
    line: line.name,
    label: lineLabel(line),
    unit: line.unit,
    planned: planned.get(line.name),
    actual: actuals.find((each) => each.line === line.name),
  });
  const wanted = (row: TookRow) => row.actual !== undefined || (row.planned ?? 0) > 0;
  return {
    minutes: lines
      .filter(({ role }) => role === 'work')
      .map(rowOf)
      .filter(wanted),
    goods: lines
      .filter(({ role, unit }) => role === 'need' && ['L', 'g', 'kg', 'm', 'm2'].includes(unit))
      .map(rowOf)
      .filter(wanted),
    after: [
      {
        line: PLANTS_LOST,
        label: 'Plants lost',
        unit: 'each',
        planned: undefined,
        actual: actuals.find((each) => each.line === PLANTS_LOST),
      },
      ...lines.filter(({ use }) => use === 'drainDays').map(rowOf),
    ],
  };
}
