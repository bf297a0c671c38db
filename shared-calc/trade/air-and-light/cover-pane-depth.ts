import { countDown } from '#shared-calc/trade/count-up.ts';
import { firstRefusal } from '#shared-calc/trade/first-refusal.ts';
import { belowZero } from '#shared-calc/trade/refuse-figure.ts';
import { tradeFunction, type Answer } from '#shared-calc/trade/trade-function.ts';

const LEAST_DEPTH = 50;

/** Depth of the panes, mm, down to the whole. Refuses a pane under 50 mm. */
export function paneDepth(depth: number, vent: number, clear: number): Answer {
  const left = countDown(depth - vent - clear);
  return (
    belowZero({ Depth: depth, 'The vent strip': vent, Clearance: clear }) ??
    firstRefusal([[left < LEAST_DEPTH, 'The vent leaves almost no cover.']]) ??
    left
  );
}

/** mm from back to front of a cover pane behind its vent strip, down to the whole. */
export const coverPaneDepth = tradeFunction({
  name: 'cover_pane_depth',
  title: 'Cover pane depth',
  group: 'air and light',
  args: [
    { name: 'depth', takes: 'mm', low: 100, high: 3000, says: 'inside, deepest' },
    { name: 'vent', takes: 'mm', low: 0, high: 600, says: 'open strip; 25 wet, 40 to 80 climbing' },
    { name: 'clear', takes: 'mm', low: 0, high: 5, says: 'free at the back' },
  ],
  gives: 'mm',
  sum: 'depth - vent - clear, down to the whole mm',
  help: 'How deep each pane is cut. A full screen top dries a frog tank out; a tank is never closed completely.',
  examples: [
    { rule: 'cover_pane_depth(445 mm, 25 mm, 1.5 mm)', gives: '418 mm' },
    { rule: 'cover_pane_depth(600 mm, 50 mm, 1.5 mm)', gives: '548 mm' },
  ],
  source: 'common practice, no source',
  cautions: ['coverGlass', 'coverRail'],
  compute: ({ depth, vent, clear }) => paneDepth(depth, vent, clear),
});
