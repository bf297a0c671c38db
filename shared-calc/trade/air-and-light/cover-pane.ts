import { paneDepth } from './cover-pane-depth.ts';
import { paneLength } from './cover-pane-length.ts';
import { paneCount } from './cover-panes.ts';
import type { Refusal } from '#shared-calc/trade/first-refusal.ts';
import { listFunction } from '#shared-calc/trade/trade-function.ts';

/** All in mm. */
export interface CoverTop {
  readonly length: number;
  readonly depth: number;
  readonly vent: number;
  readonly clear: number;
  readonly gap: number;
  readonly longest: number;
}

export interface CoverCut {
  readonly panes: number;
  /** Of one pane, whole mm. */
  readonly length: number;
  readonly depth: number;
}

/** The panes of a cover together: how many, and how each is cut, whole mm. */
export function coverPane({ length, depth, vent, clear, gap, longest }: CoverTop): CoverCut | Refusal {
  const panes = paneCount(length, longest);
  if (typeof panes !== 'number') return panes;
  const cutLength = paneLength({ length, panes, clear, gap });
  if (typeof cutLength !== 'number') return cutLength;
  const cutDepth = paneDepth(depth, vent, clear);
  return typeof cutDepth === 'number' ? { panes, length: cutLength, depth: cutDepth } : cutDepth;
}

export const coverPaneEntry = listFunction({
  name: 'COVER_PANE',
  title: 'Cover pane',
  group: 'air and light',
  takes: 'inside length and depth, vent strip, clearance, gap, longest pane',
  gives: 'panes, and length x depth of each',
  sum: 'cover_panes, cover_pane_length and cover_pane_depth together',
  help: 'The whole cover at once, as told to the glass cutter.',
  examples: [
    { rule: '900 mm, 445 mm, vent 25 mm, clear 1.5 mm, gap 2 mm, longest 600 mm', gives: '2 panes of 447 x 418 mm' },
    { rule: '600 mm, 445 mm, vent 25 mm, clear 1.5 mm, gap 2 mm, longest 600 mm', gives: '1 pane of 597 x 418 mm' },
  ],
  source: 'common practice, no source',
  cautions: ['coverGlass', 'glassEdges'],
});
