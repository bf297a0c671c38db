import type { Box } from '#shared-calc/bench/bench-types.ts';
import type { Bench } from '#shared-calc/bench/open-bench.ts';
import type { PlaceCheck } from '#shared-calc/jobs/place-checks.ts';
import { limitRowId } from './limit-rows.ts';

/** What must be visible about a cell. `fault`: a rule with a fault of its own, not one that waits on another. */
export type Loud =
  | 'stop'
  | 'watch'
  | 'advice'
  /** A check that may not hold. */
  | 'unsure'
  /** A limit of the place that nobody asked for, or that waits for a figure. */
  | 'unknown'
  | 'needs'
  | 'range'
  | 'loop'
  | 'fault'
  | 'waiting'
  | 'old'
  | 'local'
  | 'job';

/** What must be visible in a column, by line. */
export interface ColumnScan {
  readonly byLine: ReadonlyMap<string, readonly Loud[]>;
  readonly counts: ReadonlyMap<Loud, number>;
}

export const noScan: ColumnScan = { byLine: new Map(), counts: new Map() };

export function scanColumn(bench: Bench, column: string): ColumnScan {
  const byLine = new Map<string, readonly Loud[]>();
  const counts = new Map<Loud, number>();
  for (const line of bench.lines(column)) {
    const loud = loudIn(bench.box(column, line.name));
    if (loud.length === 0) continue;
    byLine.set(line.name, loud);
    for (const each of loud) counts.set(each, (counts.get(each) ?? 0) + 1);
  }
  return { byLine, counts };
}

/** A scan with the limits of the place beside the lines. */
export function withLimits(scan: ColumnScan, limits: readonly PlaceCheck[]): ColumnScan {
  const byLine = new Map(scan.byLine);
  const counts = new Map(scan.counts);
  for (const limit of limits) {
    const loud = loudLimit(limit);
    if (loud === undefined) continue;
    byLine.set(limitRowId(limit.use), [loud]);
    counts.set(loud, (counts.get(loud) ?? 0) + 1);
  }
  return { byLine, counts };
}

/** What must be visible about a limit; nothing of one that holds. */
function loudLimit({ state, level }: PlaceCheck): Loud | undefined {
  if (state === 'holds') return undefined;
  if (state === 'not known yet') return 'unknown';
  return state === 'fails' ? level : 'unsure';
}

const none: readonly Loud[] = [];

function loudIn(box: Box): readonly Loud[] {
  const state = stateOf(box);
  const isWritten = box.source === 'local' || box.source === 'job';
  if (state === undefined && !isWritten && box.flags.length === 0) return none;
  return [
    ...(state === undefined ? [] : [state]),
    ...box.flags.map((flag): Loud => (flag === 'old price' ? 'old' : 'range')),
    ...(box.source === 'local' || box.source === 'job' ? [box.source] : []),
  ];
}

function stateOf(box: Box): Loud | undefined {
  const { state, check, line, cause } = box;
  if (check?.state === 'fails') return line.level ?? 'watch';
  if (check?.state === 'may not hold') return 'unsure';
  if (state === 'needs a figure') return 'needs';
  if (state === 'loop') return 'loop';
  return state === 'waiting' ? waitOf(line.name, cause) : undefined;
}

function waitOf(line: string, cause: Box['cause']): Loud {
  return cause?.why === 'waits' && cause.problem.line === line ? 'fault' : 'waiting';
}

/** Whether a line stays visible although the rest of its section is hidden. */
export function keepsOut(loud: Loud, isCheck: boolean): boolean {
  return loud !== 'waiting' || isCheck;
}
