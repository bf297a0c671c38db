import { findCycle, readLines } from '#shared-calc/bench/find-cycle.ts';
import { descendantsOf } from '#shared-calc/recipe/family.ts';
import { limitedTanks } from '#shared-calc/recipe/limited-tanks.ts';
import { lineLabel } from '#shared-calc/recipe/line-label.ts';
import { linesFor, linesOf } from '#shared-calc/recipe/lines-of.ts';
import type { Line, Records } from '#shared-calc/records/records.ts';
import type { ActFault } from './act-fault.ts';
import { breaksOf } from './line-breaks.ts';

/** What the edit of a line breaks in recipes that inherit it, and for tanks that differ. */
export function familyFault(
  before: Records,
  after: Records,
  line: Pick<Line, 'recipe'> & Partial<Pick<Line, 'name'>>,
): ActFault | undefined {
  const { recipe } = line;
  for (const child of descendantsOf(after, recipe)) {
    const fault = faultBetween(linesOf(before, child), linesOf(after, child), line.name);
    if (fault) return { kind: 'in-recipe', recipe: child, fault };
  }
  for (const of of [recipe, ...descendantsOf(after, recipe)]) {
    for (const tank of limitedTanks(after, of)) {
      const fault = faultBetween(linesFor(before, of, tank), linesFor(after, of, tank), line.name);
      if (fault) return { kind: 'in-recipe', recipe: of, tank, fault };
    }
  }
  return undefined;
}

/** What a change of a recipe breaks in it and in all that inherit from it, for any tank. */
export function recipesFault(before: Records, after: Records, recipe: string): ActFault | undefined {
  const own = faultBetween(linesOf(before, recipe), linesOf(after, recipe));
  return own ? { kind: 'in-recipe', recipe, fault: own } : familyFault(before, after, { recipe });
}

/** The first fault that lines have and had not before. */
function faultBetween(before: readonly Line[], after: readonly Line[], name?: string): ActFault | undefined {
  if (before === after) return undefined;
  const twice = twiceIn(after, ({ name: each }) => each);
  if (twice) return { kind: 'name-taken', name: twice[1].name };
  const used = twiceIn(after, ({ use }) => use);
  if (used?.[1].use !== undefined) return { kind: 'use-taken', use: used[1].use, label: lineLabel(used[0]) };
  const breaks = breaksOf(before, after);
  if (breaks.length > 0) return { kind: 'would-break', breaks };
  const through = name === undefined ? after.map((line) => line.name) : [name];
  const cycle = findCycle(readLines(after), textOf, through);
  if (!cycle || findCycle(readLines(before), textOf, cycle)) return undefined;
  return { kind: 'loop', line: cycle[0] ?? '', text: '', cycle };
}

function textOf({ text }: Line): string {
  return text;
}

function twiceIn(lines: readonly Line[], of: (line: Line) => string | undefined): readonly [Line, Line] | undefined {
  const firsts = new Map<string, Line>();
  for (const line of lines) {
    const key = of(line);
    const first = key === undefined ? undefined : firsts.get(key);
    if (first) return [first, line];
    if (key !== undefined) firsts.set(key, line);
  }
  return undefined;
}
