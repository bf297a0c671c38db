import type { Line } from '#shared-calc/records/records.ts';
import type { Bench } from './open-bench.ts';

/** The lines of every size of a bench; a line that several sizes have is there once. */
export function everyLine(bench: Bench): readonly Line[] {
  const lists = new Set(bench.input().columns.map(({ key }) => bench.lines(key)));
  return [...new Set([...lists].flat())];
}
