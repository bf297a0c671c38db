import { sameDimension } from '#shared-calc/quantity/dimension.ts';
import { findUnit, fromBase, toBase } from '#shared-calc/quantity/unit.ts';
import type { Actual, Line } from '#shared-calc/records/records.ts';
import { readRule } from '#shared-calc/rule/read-rule.ts';
import type { Rule, RulePart } from '#shared-calc/rule/tree.ts';
import { median } from './median.ts';

/** The number of jobs whose median is proposed. */
export const LAST_JOBS = 5;

export interface Learning {
  readonly lines: readonly Line[];
  readonly actuals: readonly Actual[];
  /** The plan of the job's own bench for the line, in the line's unit; `undefined` if it is not known. */
  readonly plannedOf: (actual: Actual) => number | undefined;
}

export interface MeasuredJob {
  readonly job: string;
  readonly on: string;
  /** For a given line: the measured figure, in the line's unit. For any other: measured divided by planned. */
  readonly figure: number;
}

/** What the last jobs show about a line of the house; changes nothing by itself. */
export interface Lesson {
  readonly line: string;
  readonly unit: string;
  /** `figure`: a given figure itself; `factor`: times the rule. */
  readonly as: 'figure' | 'factor';
  /** The latest jobs, newest first, five at most. */
  readonly jobs: readonly MeasuredJob[];
  readonly median: number;
  readonly old: string;
  /** The house's new text; left out until five jobs are measured, or if it would change nothing. */
  readonly proposed?: string;
}

/**
 * Medians of the last five jobs for each measured line. A given line gets its median; a rule is multiplied by the
 * median of measured over planned. Three digits are kept.
 */
export function teachHouse(learning: Learning): readonly Lesson[] {
  const byLine = Map.groupBy(learning.actuals, (actual) => actual.line);
  return learning.lines.flatMap((line) => lessonOf(line, byLine.get(line.name) ?? [], learning) ?? []);
}

function lessonOf(line: Line, actuals: readonly Actual[], learning: Learning): Lesson | undefined {
  const isFigure = line.role === 'given';
  const jobs = [...Map.groupBy(actuals, (actual) => actual.job)]
    .flatMap(([job, ofJob]) => {
      const figure = isFigure ? meanOf(line, ofJob) : timesPlanned(line, ofJob, learning);
      return figure === undefined ? [] : [{ job, on: latestOf(ofJob), figure }];
    })
    .toSorted((one, other) => (one.on > other.on ? -1 : Number(one.on < other.on)))
    .slice(0, LAST_JOBS);
  const middle = median(jobs.map(({ figure }) => figure));
  if (middle === undefined) return undefined;
  const lesson = { line: line.name, unit: line.unit, jobs, median: middle, old: line.text };
  const text = isFigure ? `${ownDigits(line, middle)} ${line.unit}` : scaled(line, middle);
  const isOffered = jobs.length === LAST_JOBS && !isSame(text, line.text);
  return { ...lesson, as: isFigure ? 'figure' : 'factor', ...(isOffered && { proposed: text }) };
}

/** In the line's unit; a measure whose kind does not fit the line is ignored. */
function measured(line: Line, { value, unit }: Actual): number | undefined {
  const given = findUnit(unit);
  const own = findUnit(line.unit);
  if (!given || !own || !sameDimension(given.dimension, own.dimension)) return undefined;
  return fromBase(toBase(value, given), own);
}

function meanOf(line: Line, actuals: readonly Actual[]): number | undefined {
  const figures = actuals.flatMap((actual) => measured(line, actual) ?? []);
  return figures.length === 0 ? undefined : figures.reduce((sum, each) => sum + each, 0) / figures.length;
}

/** Over all sizes of a job together, so that a small one does not weigh as much as a large one. */
function timesPlanned(line: Line, actuals: readonly Actual[], { plannedOf }: Learning): number | undefined {
  let took = 0;
  let planned = 0;
  for (const actual of actuals) {
    const figure = measured(line, actual);
    const plan = plannedOf(actual);
    if (figure === undefined || plan === undefined) continue;
    took += figure;
    planned += plan;
  }
  return planned > 0 ? took / planned : undefined;
}

function latestOf(actuals: readonly Actual[]): string {
  return (
    actuals
      .map(({ on }) => on)
      .toSorted()
      .at(-1) ?? ''
  );
}

/**
 * A factor in front of the rule; an existing factor is multiplied, not nested. What is counted stays whole: three
 * branches at 1.5 times are 5.
 */
function scaled({ text, unit }: Line, factor: number): string {
  const { times, rule } = factorIn(text);
  const now = threeDigits(times * factor);
  if (now === 1) return rule;
  return unit === 'each' ? `round(${now} * (${rule}), 0)` : `${now} * (${rule})`;
}

/** The factor that an earlier lesson put in front of a rule: 1.5 of `1.5 * (rule)` and of `round(1.5 * (rule), 0)`. */
function factorIn(text: string): { readonly times: number; readonly rule: string } {
  const read = readRule(text);
  const product = read.ok ? productIn(read.value) : undefined;
  if (product?.left.part !== 'number' || product.left.unit || product.right.part !== 'group')
    return { times: 1, rule: text };
  const { from, to } = product.right;
  return { times: product.left.value, rule: text.slice(from + 1, to - 1) };
}

function productIn(rule: Rule): RulePart<'infix'> | undefined {
  const part = rule.part === 'call' && rule.name === 'round' ? rule.args[0] : rule;
  return part?.part === 'infix' && part.sign === '*' ? part : undefined;
}

function threeDigits(figure: number): number {
  return Number(figure.toPrecision(3));
}

/** What is counted is taught as a whole number. */
function ownDigits({ unit }: Line, figure: number): number {
  return unit === 'each' ? Math.round(figure) : threeDigits(figure);
}

function isSame(one: string, other: string): boolean {
  const [a, b] = [one, other].map((text) => text.replaceAll(/\s+/g, ''));
  return a === b;
}
