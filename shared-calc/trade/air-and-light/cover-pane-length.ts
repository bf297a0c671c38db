import { countDown } from '#shared-calc/trade/count-up.ts';
import { firstRefusal } from '#shared-calc/trade/first-refusal.ts';
import { belowZero, notAboveZero } from '#shared-calc/trade/refuse-figure.ts';
import { sayPlain } from '#shared-calc/trade/say-plain.ts';
import { tradeFunction, type Answer } from '#shared-calc/trade/trade-function.ts';

export interface PaneRow {
  readonly length: number;
  readonly panes: number;
  readonly clear: number;
  readonly gap: number;
}

/** Length of one pane of a row, mm, down to the whole: clearance at both ends, a gap between each two. */
export function paneLength({ length, panes, clear, gap }: PaneRow): Answer {
  const left = (length - 2 * clear - (panes - 1) * gap) / panes;
  return (
    notAboveZero({ Panes: panes }) ??
    firstRefusal([[!Number.isInteger(panes), `Panes are whole; you gave ${sayPlain(panes)}.`]]) ??
    belowZero({ Clearance: clear, 'The gap': gap }) ??
    firstRefusal([[left < 1, `Clearances and gaps leave no pane in ${sayPlain(length, 1)} mm.`]]) ??
    countDown(left)
  );
}

/** mm of one cover pane, down to the whole. Refuses where clearances leave nothing. */
export const coverPaneLength = tradeFunction({
  name: 'cover_pane_length',
  title: 'Cover pane length',
  group: 'air and light',
  args: [
    { name: 'length', takes: 'mm', low: 100, high: 3000, says: 'inside, widest' },
    { name: 'panes', takes: 'each', low: 1, high: 6, says: 'side by side' },
    { name: 'clear', takes: 'mm', low: 0, high: 5, says: 'free at each end' },
    { name: 'gap', takes: 'mm', low: 0, high: 5, says: 'between two panes' },
  ],
  gives: 'mm',
  sum: '(length - 2 x clear - (panes - 1) x gap) / panes, down to the whole mm',
  help: 'How long each pane is cut.',
  examples: [
    { rule: 'cover_pane_length(900 mm, 2, 1.5 mm, 2 mm)', gives: '447 mm' },
    { rule: 'cover_pane_length(600 mm, 1, 1.5 mm, 2 mm)', gives: '597 mm' },
  ],
  source: 'common practice, no source',
  cautions: ['glassEdges'],
  compute: paneLength,
});
