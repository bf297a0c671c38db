import type { Line } from '#shared-calc/records/records.ts';

/** Whether a need is of leaves, which come from the year's store and are treated: `leaves_need`, `broad_leaves_need`. */
export function isLeafNeed(line: Pick<Line, 'role' | 'name'>): boolean {
  return line.role === 'need' && /(?:^|_)leaves(?:_|$)/.test(line.name);
}
