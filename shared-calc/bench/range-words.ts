import { fromBase, unitOf } from '#shared-calc/quantity/unit.ts';
import { shownUnit, showValue, type Display } from '#shared-calc/quantity/shown-unit.ts';
import { unitBehind, writeNumber } from '#shared-calc/quantity/write-figure.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { readRule } from '#shared-calc/rule/read-rule.ts';
import { ungrouped, walk, type Rule } from '#shared-calc/rule/tree.ts';
import type { RangeEnds } from './ranges.ts';

/** The end of a range that a check minds: the most of what it limits from above, the least of what it wants at least. */
export type RangeSide = 'from' | 'to' | 'both';

interface Minded {
  readonly side: RangeSide;
  /** Names of the checks. */
  readonly checks: readonly string[];
}

const minded = new WeakMap<readonly Line[], ReadonlyMap<string, Minded>>();

/** The side that the checks of a recipe mind of a line: both, if none reads it or they read it from each side. */
export function sideOf(lines: readonly Line[], line: string): RangeSide {
  return mindedIn(lines).get(line)?.side ?? 'both';
}

/** The checks that compare a line with something. */
export function checksOn(lines: readonly Line[], line: string): readonly string[] {
  return mindedIn(lines).get(line)?.checks ?? [];
}

/** The lines that a check compares. */
export function linesUnder(lines: readonly Line[], check: string): readonly string[] {
  return [...mindedIn(lines)].flatMap(([line, { checks }]) => (checks.includes(check) ? [line] : []));
}

function mindedIn(lines: readonly Line[]): ReadonlyMap<string, Minded> {
  const known = minded.get(lines) ?? findMinded(lines);
  minded.set(lines, known);
  return known;
}

function findMinded(lines: readonly Line[]): ReadonlyMap<string, Minded> {
  const found = new Map<string, Minded>();
  for (const { name, text } of lines.filter((line) => line.role === 'check' && line.unlessRanged === undefined)) {
    const rule = readRule(text);
    for (const [line, side] of rule.ok ? comparedIn(rule.value) : []) {
      const { side: before = side, checks = [] } = found.get(line) ?? {};
      found.set(line, { side: before === side ? side : 'both', checks: [...new Set([...checks, name])] });
    }
  }
  return found;
}

/** The lines that stand alone on a side of a comparison, with the end that could break it. */
function comparedIn(rule: Rule): readonly (readonly [line: string, side: RangeSide])[] {
  const found: (readonly [string, RangeSide])[] = [];
  walk(rule, (part) => {
    if (part.part !== 'infix' || !/^[<>]=?$/.test(part.sign)) return;
    const [left, right] = [ungrouped(part.left), ungrouped(part.right)];
    const isBelow = part.sign.startsWith('<');
    if (left.part === 'name') found.push([left.name, isBelow ? 'to' : 'from']);
    if (right.part === 'name') found.push([right.name, isBelow ? 'from' : 'to']);
  });
  return found;
}

interface Ranged {
  readonly value: number;
  readonly range: RangeEnds;
  readonly unit: string;
  readonly side: RangeSide;
}

/** A ranged figure and its ends as they are shown, without the unit. */
export interface RangeWords {
  readonly likely: string;
  readonly from: string;
  readonly to: string;
  /** The end that matters, beside the likely figure: `up to 29.9`, `down to 74`, `0.8 to 3.0`. */
  readonly beside: string;
}

/**
 * The figure and its ends with no more decimals than the range bears: a step of 1, 2 or 5 times a power of ten that is
 * at most a tenth of the range. A given figure keeps what was written.
 */
export function rangeWords({ value, range, unit, side }: Ranged, display: Display): RangeWords {
  const write = (base: number) => withDecimals(base, { unit, most: decimalsOf(range, unit, display) }, display);
  const [likely, from, to] = [write(value), write(range.from), write(range.to)];
  const beside = side === 'to' ? `up to ${to}` : side === 'from' ? `down to ${from}` : `${from} to ${to}`;
  return { likely, from, to, beside };
}

function withDecimals(
  base: number,
  { unit, most }: { readonly unit: string; readonly most: number },
  display: Display,
): string {
  const usual = showValue(base, unit, display);
  if (display.fractions && shownUnit(unit, display) === 'in') return usual;
  const mark = display.decimalComma ? ',' : '.';
  const decimals = usual.includes(mark) ? usual.length - usual.lastIndexOf(mark) - 1 : 0;
  if (decimals <= most) return usual;
  return writeNumber(fromBase(base, unitOf(shownUnit(unit, display))), most, display);
}

/** The decimals of the largest step of 1, 2 or 5 times a power of ten not above a tenth of the range. */
function decimalsOf({ from, to }: RangeEnds, unit: string, display: Display): number {
  const shown = unitOf(shownUnit(unit, display));
  const tenth = Math.abs(fromBase(to, shown) - fromBase(from, shown)) / 10;
  return tenth > 0 ? Math.max(0, -Math.floor(Math.log10(tenth) + 1e-9)) : 0;
}

/** A ranged figure with the end that matters, each with its unit: `27.3 degC, up to 29.9 degC`. */
export function withRange(ranged: Ranged, display: Display): string {
  const { likely, from, to } = rangeWords(ranged, display);
  const unit = unitBehind(shownUnit(ranged.unit, display), display.currency);
  if (ranged.side === 'both') return `${likely}${unit} (${from} to ${to})`;
  return `${likely}${unit}, ${ranged.side === 'to' ? `up to ${to}` : `down to ${from}`}${unit}`;
}
