import type { Line, Records } from '#shared-calc/records/records.ts';
import { bySortKey } from '#shared-calc/records/sort-key.ts';

/** A recipe's lines in order. */
export function linesOf(records: Pick<Records, 'line'>, recipe: string): readonly Line[] {
  return [...records.line.values()].filter((line) => line.recipe === recipe).toSorted(bySortKey);
}
