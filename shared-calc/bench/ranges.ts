import type { BoxValue } from '#shared-calc/engine/box-content.ts';
import { probesOf, type Probe, type ProbedColumn } from './probes.ts';

/** The least and greatest figure of a line over the likely column and all probes, in coherent base units. */
export interface BoxRange {
  readonly from: number;
  readonly to: number;
  /** The probe that gives the end; null where the likely column gives it. */
  readonly fromBy: string | null;
  readonly toBy: string | null;
}

/** The probes of one size, and the ranges that they give. */
export interface ColumnRanges {
  readonly probes: readonly Probe[];
  /** By line; a line that no guess moves has none, and `not known` where a probe has no answer. */
  readonly ranges: ReadonlyMap<string, BoxRange | 'not known'>;
  /** By check that holds at the likely figures: the probes in which it does not hold or has no answer. */
  readonly badIn: ReadonlyMap<string, readonly string[]>;
}

const noRanges: ColumnRanges = { probes: [], ranges: new Map(), badIn: new Map() };

/** Works the probes of one size. */
export function rangesOf(column: ProbedColumn): ColumnRanges {
  const probes = probesOf(column);
  if (probes.length === 0) return noRanges;
  const ranges = new Map<string, BoxRange | 'not known'>();
  for (const { name, values } of probes) {
    for (const [line, value] of values) {
      const range = ranges.get(line) ?? likelyOf(column.before(line));
      if (range) ranges.set(line, range === 'not known' ? range : widened(range, name, value));
    }
  }
  for (const [line, range] of ranges) if (range !== 'not known' && range.from === range.to) ranges.delete(line);
  const checks = column.lines.filter(({ role }) => role === 'check');
  return { probes, ranges, badIn: new Map(checks.map(({ name }) => [name, badProbes(name, column, probes)])) };
}

function badProbes(check: string, { before }: ProbedColumn, probes: readonly Probe[]): readonly string[] {
  const likely = before(check);
  if (!likely.known || likely.value !== true) return [];
  return probes.flatMap(({ name, values }) => {
    const value = values.get(check);
    return value === undefined || (value.known && value.value === true) ? [] : [name];
  });
}

/** A cell without a figure, or that has a word or a yes, has no range. */
function likelyOf(likely: BoxValue): BoxRange | undefined {
  if (!likely.known || typeof likely.value !== 'number') return undefined;
  return { from: likely.value, to: likely.value, fromBy: null, toBy: null };
}

function widened(range: BoxRange, probe: string, value: BoxValue): BoxRange | 'not known' {
  if (!value.known || typeof value.value !== 'number') return 'not known';
  if (value.value < range.from) return { ...range, from: value.value, fromBy: probe };
  return value.value > range.to ? { ...range, to: value.value, toBy: probe } : range;
}
