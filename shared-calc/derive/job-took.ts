import { namedLines } from '#shared-calc/bench/column-lines.ts';
import type { Box } from '#shared-calc/bench/bench-types.ts';
import type { RangeEnds } from '#shared-calc/bench/ranges.ts';
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
  /** How far guesses may move the plan; left out where none does, and of what is planned at the likely figures alone. */
  readonly range?: RangeEnds | 'not known';
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
  const mean = meanOver(bench, line, ({ value }) => (typeof value === 'number' ? value : undefined));
  return mean === undefined ? undefined : cleanNoise(fromBase(mean, unitOf(line.unit)));
}

/** The means of the ends of each size: a guess is of the whole job, and moves all of them the same way. */
function rangeOf(bench: Bench, line: Line): TookRow['range'] {
  const ends = (end: keyof RangeEnds) =>
    meanOver(bench, line, ({ value, range }) => {
      if (range === 'not known' || typeof value !== 'number') return undefined;
      return range?.[end] ?? value;
    });
  const [from, to] = [ends('from'), ends('to')];
  if (from === undefined || to === undefined) return 'not known';
  return from < to ? { from, to } : undefined;
}

/** Over all builds that have the line; `undefined` if one has no figure. */
function meanOver(bench: Bench, line: Line, figureOf: (box: Box) => number | undefined): number | undefined {
  let sum = 0;
  let builds = 0;
  for (const { key, count } of bench.input().columns) {
    if (!namedLines(bench.lines(key)).has(line.name)) continue;
    const figure = figureOf(bench.box(key, line.name));
    if (figure === undefined) return undefined;
    sum += figure * count;
    builds += count;
  }
  return builds === 0 ? undefined : sum / builds;
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
      ...lines
        .filter(({ use }) => use === 'drainDays')
        .map((line) => {
          const range = rangeOf(bench, line);
          return { ...rowOf(line), ...(range && { range }) };
        }),
    ],
  };
}
