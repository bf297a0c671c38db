import { lineTagNames, useOf, type LinePlace, type LineTag, type UseName } from '#shared-calc/fields/uses.ts';
import type { Line } from '#shared-calc/records/records.ts';

interface ReadLines {
  readonly byUse: ReadonlyMap<UseName, Line>;
  readonly byTag: ReadonlyMap<LineTag, readonly Line[]>;
}

const cache = new WeakMap<readonly Line[], ReadLines>();

/** The line of a recipe for a use; none if the recipe has no such line. */
export function lineFor(lines: readonly Line[], use: UseName): Line | undefined {
  return readLines(lines).byUse.get(use);
}

/**
 * Whether a recipe should have a line for a use: true, except for uses that a tank may lack, and for uses that go with
 * another use that this recipe lacks.
 */
export function isExpected(lines: readonly Line[], use: UseName): boolean {
  const { optional = false, goesWith } = useOf(use);
  return !optional && (goesWith === undefined || [...readLines(lines).byUse.keys()].some((each) => each === goesWith));
}

/** The lines of a recipe with a tag, in order. */
export function linesAs(lines: readonly Line[], tag: LineTag): readonly Line[] {
  return readLines(lines).byTag.get(tag) ?? [];
}

export function isAs(line: Pick<Line, 'as'>, tag: LineTag): boolean {
  return line.as?.includes(tag) ?? false;
}

/** The build step of a need: its own place, otherwise the place of most needs of its section. */
export function needPlace(
  lines: readonly Line[],
  { place, section }: Pick<Line, 'place' | 'section'>,
): LinePlace | undefined {
  if (place !== undefined) return place;
  const placed = lines.flatMap((line) => (line.role === 'need' && line.section === section ? (line.place ?? []) : []));
  const counts = [...Map.groupBy(placed, (each) => each).values()].toSorted((one, other) => other.length - one.length);
  return counts[0]?.[0];
}

function readLines(lines: readonly Line[]): ReadLines {
  const known = cache.get(lines);
  if (known) return known;
  const read = {
    byUse: new Map(lines.flatMap((line) => (line.use === undefined ? [] : [[line.use, line] as const]))),
    byTag: new Map(lineTagNames.map((tag) => [tag, lines.filter((line) => isAs(line, tag))] as const)),
  };
  cache.set(lines, read);
  return read;
}
