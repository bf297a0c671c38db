import type { BoxProblem } from '#shared-calc/engine/box-content.ts';
import { inSentence, lineLabel } from '#shared-calc/recipe/line-label.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { namedLines } from './column-lines.ts';
import type { Bench } from './open-bench.ts';

/** A line without a figure, and the checks of the size that cannot be worked without it. */
export interface MissingFigure {
  readonly line: Line;
  /** `dam height not measured` */
  readonly what: string;
  readonly checks: readonly Line[];
}

/** What the checks of a size wait for, by the first line each of them lacks, in the order of the recipe's checks. */
export function missingFigures(bench: Bench, column: string): readonly MissingFigure[] {
  const checks = bench.lines(column).filter(({ role }) => role === 'check');
  const waiting = checks.flatMap((check) => {
    const wait = waitOf(bench, column, check.name);
    return wait && !isUnasked(bench, column, check) ? [{ check, ...wait }] : [];
  });
  return [...Map.groupBy(waiting, ({ line }) => line)].flatMap(([line, same]) => {
    const [first] = same;
    return first ? [{ line, what: first.what, checks: same.map(({ check }) => check) }] : [];
  });
}

/** `dam height not measured; 18 checks wait for it.` */
export function sayMissing(missing: MissingFigure): string {
  return missing.line.role === 'check' ? `${missing.what}.` : `${missing.what}; ${sayWaiting(missing)}`;
}

/** `18 checks wait for it.` */
export function sayWaiting({ checks }: Pick<MissingFigure, 'checks'>): string {
  return `${checks.length === 1 ? '1 check waits' : `${checks.length} checks wait`} for it.`;
}

/** The same as plain data. */
export function missingData({ line, checks }: MissingFigure): Record<string, unknown> {
  return { what: 'measure', of: line.name, label: lineLabel(line), checks: checks.map(({ name }) => name) };
}

interface Wait {
  readonly line: Line;
  readonly what: string;
  /** A figure is to be given; else the line has one that leads to no answer. */
  readonly isMissing: boolean;
}

/** The line that leaves a cell without a value; nothing for a cell that has one. */
export function waitOf(bench: Bench, column: string, name: string): Wait | undefined {
  const { cause, line: own } = bench.box(column, name);
  if (!cause) return undefined;
  const problem: BoxProblem = cause.why === 'waits' ? cause.problem : { why: cause.why, line: name };
  const line = namedLines(bench.lines(column)).get(problem.line) ?? own;
  const isMeasured = bench.box(column, line.name).source === 'tank';
  const isMissing = problem.why === 'missing';
  return {
    line,
    isMissing,
    what: problem.says ?? `${inSentence(lineLabel(line))} ${lackWords(problem.why, isMeasured)}`,
  };
}

function lackWords(why: BoxProblem['why'], isMeasured: boolean): string {
  switch (why) {
    case 'missing':
      return isMeasured ? 'not measured' : 'has no figure';
    case 'loop':
      return 'depends on itself';
    case 'faulty':
      return 'cannot be read';
    case 'divided by zero':
      return 'divides by zero';
    case 'no number':
      return 'comes to no number';
    default:
      return 'has no answer';
  }
}

function isUnasked(bench: Bench, column: string, { name }: Line): boolean {
  return bench.box(column, name).check?.state === 'not asked';
}
