import type { Sourced, SourceMark } from '#shared-calc/fields/source.ts';
import { surveyUses } from '#shared-calc/fields/survey.ts';
import type { BoxSource } from '#shared-calc/recipe/column.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { namesIn } from '#shared-calc/rule/tree.ts';
import type { Box } from './bench-types.ts';
import type { Bench } from './open-bench.ts';

/** Where a figure is from: as its record says, or who gave it. */
export type FigureFrom = SourceMark | 'none' | Exclude<BoxSource, 'tank' | 'house' | 'kind'>;

/** A figure that another rests on. */
export interface Footing {
  readonly line: Line;
  readonly from: FigureFrom;
  readonly note: string;
}

/** What house, survey or animal kind say of the source of a cell's figure; nothing of one that was typed. */
export function sourceOf(bench: Bench, { source: from, line, column }: Box): Sourced {
  if (from === 'house') return { source: line.source, sourceNote: line.sourceNote };
  if (from !== 'survey' && from !== 'kind') return {};
  return (
    bench
      .input()
      .columns.find(({ key }) => key === column)
      ?.given?.get(line.name)?.source ?? {}
  );
}

/** A figure or choice that no rule works out and no tank was measured for. */
export function isGiven({ rule, source, text }: Box): boolean {
  return rule === undefined && source !== 'tank' && text !== '';
}

/**
 * The figures that a cell rests on, in the order of the recipe: what is given, and rules with a mark of their own. The
 * cell itself is among them.
 */
export function restsOn(bench: Bench, column: string, line: string): readonly Footing[] {
  const read = linesRead(bench, column, line);
  return bench.lines(column).flatMap(({ name }) => {
    if (!read.has(name)) return [];
    const box = bench.box(column, name);
    return footingOf(box, sourceOf(bench, box)) ?? [];
  });
}

/** The names of the lines that a cell reads, straight or through others; its own among them. */
export function linesRead(bench: Bench, column: string, line: string): ReadonlySet<string> {
  const read = new Set<string>();
  const left = [line];
  for (let name = left.pop(); name !== undefined; name = left.pop()) {
    if (read.has(name)) continue;
    read.add(name);
    const { rule } = bench.box(column, name);
    if (rule) left.push(...namesIn(rule));
  }
  return read;
}

function footingOf(box: Box, { source, sourceNote: note = '' }: Sourced): Footing | undefined {
  const { line, source: giver } = box;
  if (source !== undefined) return { line, from: source, note };
  if (!isGiven(box) || giver === 'tank') return undefined;
  return { line, from: giver === 'house' || giver === 'kind' ? 'none' : giver, note: '' };
}

/** Figures that nobody can look up, or has asked. */
export interface Unsure {
  readonly memory: readonly Footing[];
  /** Without a source; those typed for this job or size are among them, but not its choices. */
  readonly unsaid: readonly Footing[];
  /** Figures of the house that stand in for answers of the survey. */
  readonly notAsked: readonly Footing[];
}

export function unsureAmong(footings: readonly Footing[]): Unsure {
  return {
    memory: footings.filter(({ from }) => from === 'memory'),
    unsaid: footings.filter(({ from, line }) => from === 'none' || (isTyped(from) && !isWord(line))),
    notAsked: footings.filter(({ from, line }) => !isTyped(from) && from !== 'survey' && asked.has(line.use ?? '')),
  };
}

const asked: ReadonlySet<string> = new Set(surveyUses);

function isTyped(from: FigureFrom): boolean {
  return from === 'local' || from === 'job';
}

function isWord({ unit }: Line): boolean {
  return unit === 'choice' || unit === 'yes_no';
}
