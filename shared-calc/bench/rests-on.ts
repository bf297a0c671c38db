import type { Sourced } from '#shared-calc/fields/source.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { namesIn } from '#shared-calc/rule/tree.ts';
import type { Box } from './bench-types.ts';
import type { Bench } from './open-bench.ts';

/** A figure that another rests on, and where it is from. */
export interface Footing extends Sourced {
  readonly line: Line;
  /** Typed for this size or this job, in place of what the house has. */
  readonly writtenOver: boolean;
}

/** What the house says of the source of a cell's figure; nothing of one that was typed over it. */
export function houseSource({ source: from, line }: Box): Sourced {
  return from === 'house' ? { source: line.source, sourceNote: line.sourceNote } : {};
}

/** A figure that no rule works out and no tank was measured for. */
export function isGiven({ rule, source, text }: Box): boolean {
  return rule === undefined && source !== 'tank' && text !== '';
}

/**
 * The figures that a cell rests on, in the order of the recipe: what is given, and rules with a mark of their own. The
 * cell itself is among them.
 */
export function restsOn(bench: Bench, column: string, line: string): readonly Footing[] {
  const found = new Map<string, Footing>();
  const seen = new Set<string>();
  const left = [line];
  for (let name = left.pop(); name !== undefined; name = left.pop()) {
    if (seen.has(name)) continue;
    seen.add(name);
    const box = bench.box(column, name);
    const { source, sourceNote } = houseSource(box);
    const writtenOver = box.source === 'local' || box.source === 'job';
    if (isGiven(box) || source !== undefined) found.set(name, { line: box.line, source, sourceNote, writtenOver });
    if (box.rule) left.push(...namesIn(box.rule));
  }
  return bench.input().lines.flatMap(({ name }) => found.get(name) ?? []);
}
