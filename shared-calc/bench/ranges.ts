import type { BoxValue } from '#shared-calc/engine/box-content.ts';
import { probesOf, type Probe, type ProbedColumn } from './probes.ts';

/** In coherent base units. */
export interface RangeEnds {
  readonly from: number;
  readonly to: number;
}

/** The least and greatest figure of a line over the likely column and all probes. */
export interface BoxRange extends RangeEnds {
  /** The probe that gives the end; null where the likely column gives it. */
  readonly fromBy: string | null;
  readonly toBy: string | null;
}

/** The probes of one size, and the ranges that they give. */
export interface ColumnRanges {
  readonly probes: readonly Probe[];
  /** By line; a line that no guess moves has none, and `not known` where a probe has no answer. */
  readonly ranges: ReadonlyMap<string, BoxRange | 'not known'>;
  /** By line that is yes at the likely figures, as a check that holds: the probes in which it is not. */
  readonly badIn: ReadonlyMap<string, readonly string[]>;
}

const noRanges: ColumnRanges = { probes: [], ranges: new Map(), badIn: new Map() };

/** Works the probes of one size. */
export function rangesOf(column: ProbedColumn): ColumnRanges {
  const probes = probesOf(column);
  if (probes.length === 0) return noRanges;
  const ranges = new Map<string, BoxRange | 'not known'>();
  const badIn = new Map<string, string[]>();
  for (const { name, values } of probes) {
    for (const [line, value] of values) {
      const likely = column.before(line);
      if (isFigure(likely)) ranges.set(line, widened(ranges.get(line) ?? rangeAt(likely.value), name, value));
      else if (isYes(likely) && !isYes(value)) addTo(badIn, line, name);
    }
  }
  return { probes, ranges: new Map([...ranges].filter(([, range]) => isWide(range))), badIn };
}

/** A line that no guess moves has no range. */
function isWide(range: BoxRange | 'not known'): boolean {
  return range === 'not known' || range.from < range.to;
}

function isFigure(value: BoxValue): value is { readonly known: true; readonly value: number } {
  return value.known && typeof value.value === 'number';
}

function isYes(value: BoxValue): boolean {
  return value.known && value.value === true;
}

function rangeAt(value: number): BoxRange {
  return { from: value, to: value, fromBy: null, toBy: null };
}

function addTo(lists: Map<string, string[]>, key: string, each: string): void {
  const list = lists.get(key) ?? [];
  list.push(each);
  lists.set(key, list);
}

function widened(range: BoxRange | 'not known', probe: string, value: BoxValue): BoxRange | 'not known' {
  if (range === 'not known' || !isFigure(value)) return 'not known';
  if (value.value < range.from) return { ...range, from: value.value, fromBy: probe };
  return value.value > range.to ? { ...range, to: value.value, toBy: probe } : range;
}
