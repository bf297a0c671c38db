import type { Line, Records } from '#shared-calc/records/records.ts';
import { limitedTanks } from './limited-tanks.ts';
import { linesFor } from './lines-of.ts';
import { keysBetween, withLineFor } from './write-lines.ts';

/**
 * The book in which recipes, each behind its parent, have for each tank what they had in another state of it: what a
 * tank has otherwise now becomes a difference for that tank. Lines of some names are left as they are now.
 */
export function tanksAsBefore(
  before: Records,
  after: Records,
  recipes: readonly string[],
  but: ReadonlySet<string> = new Set(),
): Records {
  let now = after;
  for (const recipe of recipes) {
    for (const tank of new Set([...limitedTanks(before, recipe), ...limitedTanks(now, recipe)])) {
      const had = linesFor(before, recipe, tank).filter(({ name }) => !but.has(name));
      now = had.reduce((so, line) => lineAsBefore(so, line, tank), now);
    }
  }
  return now;
}

function lineAsBefore(records: Records, had: Line, tank: string): Records {
  const has = linesFor(records, had.recipe, tank).find(({ name }) => name === had.name);
  const line = has && { ...had, id: has.id, order: has.order };
  return line && keysBetween(has, line).length > 0 ? withLineFor(records, line, [tank]) : records;
}
