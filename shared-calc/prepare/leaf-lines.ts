import { isAs } from '#shared-calc/recipe/lines-by-use.ts';
import type { Line } from '#shared-calc/records/records.ts';

/** Whether a need is of leaves, which come from the year's stock and are treated. */
export function isLeafNeed(line: Pick<Line, 'role' | 'as'>): boolean {
  return line.role === 'need' && isAs(line, 'leaves');
}
