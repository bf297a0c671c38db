import type { Line } from '#shared-calc/records/records.ts';
import { sortKeyBetween } from '#shared-calc/records/sort-key.ts';

/**
 * Lines in the order that they have, with keys that fit those of a parent: as many as can keep the parent's key, the
 * others lie between them.
 */
export function placedAs(lines: readonly Line[], parent: ReadonlyMap<string, Line>): readonly Line[] {
  const keyOf = ({ id }: Line) => parent.get(id)?.order;
  const fixed = longestRun(lines, keyOf);
  const placed: Line[] = [];
  let between: Line[] = [];
  const place = (next: string | undefined) => {
    placed.push(...within(between, placed.at(-1)?.order, next));
    between = [];
  };
  for (const line of lines) {
    const order = fixed.has(line) ? keyOf(line) : undefined;
    if (order === undefined) between.push(line);
    else {
      place(order);
      placed.push({ ...line, order });
    }
  }
  place(undefined);
  return placed;
}

/** As many lines as can be that stand in the order of their keys; those without a key are none of them. */
function longestRun(lines: readonly Line[], keyOf: (line: Line) => string | undefined): ReadonlySet<Line> {
  interface Run {
    readonly line: Line;
    readonly key: string;
    readonly length: number;
    readonly before: Run | undefined;
  }
  const runs: Run[] = [];
  for (const line of lines) {
    const key = keyOf(line);
    if (key === undefined) continue;
    const before = longest(runs.filter((run) => run.key < key));
    runs.push({ line, key, length: (before?.length ?? 0) + 1, before });
  }
  const run = new Set<Line>();
  for (let at = longest(runs); at; at = at.before) run.add(at.line);
  return run;
}

function longest<R extends { readonly length: number }>(runs: readonly R[]): R | undefined {
  return runs.reduce<R | undefined>((best, run) => (best && best.length >= run.length ? best : run), undefined);
}

/** Lines between two keys; those that fit keep their own. */
function within(lines: readonly Line[], after: string | undefined, before: string | undefined): readonly Line[] {
  const own = lines.map(({ order }) => order);
  const bounds = [...(after === undefined ? [] : [after]), ...own, ...(before === undefined ? [] : [before])];
  if (bounds.every((key, at) => at === 0 || (bounds[at - 1] ?? '') < key)) return lines;
  const keys = keysBetween(lines.length, after, before);
  return lines.map((line, at) => ({ ...line, order: keys[at] ?? line.order }));
}

/** Keys in order between two others; the middle one first, so that they stay short. */
function keysBetween(count: number, after: string | undefined, before: string | undefined): readonly string[] {
  if (count === 0) return [];
  const key = sortKeyBetween(after, before);
  // Behind the last key of a list there is always room for a later one.
  const first = before === undefined ? 0 : Math.floor(count / 2);
  return [...keysBetween(first, after, key), key, ...keysBetween(count - first - 1, key, before)];
}
