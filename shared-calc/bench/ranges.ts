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
  const ends = new Map<string, Ends | 'not known'>();
  const badIn = new Map<string, string[]>();
  for (const { name, lines, values } of probes) {
    values().forEach((value, at) => {
      const line = lines[at] ?? '';
      const likely = column.before(line);
      if (isFigure(likely)) widen(ends, line, { likely: likely.value, name, value });
      else if (isYes(likely) && !isYes(value)) addTo(badIn, line, name);
    });
  }
  return { probes, ranges: new Map([...ends].filter(([, range]) => isWide(range))), badIn };
}

type Ends = { -readonly [Part in keyof BoxRange]: BoxRange[Part] };

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

function addTo(lists: Map<string, string[]>, key: string, each: string): void {
  const list = lists.get(key) ?? [];
  list.push(each);
  lists.set(key, list);
}

interface Probed {
  readonly likely: number;
  readonly name: string;
  readonly value: BoxValue;
}

function widen(all: Map<string, Ends | 'not known'>, line: string, { likely, name, value }: Probed): void {
  const known = all.get(line);
  if (known === 'not known') return;
  const ends = known ?? { from: likely, to: likely, fromBy: null, toBy: null };
  if (!known || !isFigure(value)) all.set(line, isFigure(value) ? ends : 'not known');
  if (!isFigure(value)) return;
  if (value.value < ends.from) {
    ends.from = value.value;
    ends.fromBy = name;
  } else if (value.value > ends.to) {
    ends.to = value.value;
    ends.toBy = name;
  }
}
