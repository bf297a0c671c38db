import { belowZero, sayMm } from '#shared-calc/trade/refuse-figure.ts';
import { refused, tradeFunction } from '#shared-calc/trade/trade-function.ts';

/** Inside measurement from an outside one, mm. Warns under 100 mm; refuses where the glass leaves nothing. */
export const insideSize = tradeFunction({
  name: 'inside_size',
  title: 'Inside size',
  group: 'geometry',
  args: [
    { name: 'outside', takes: 'mm', low: 300, high: 1500, says: 'outside or catalogue size' },
    { name: 'panes', takes: 'each', low: 1, high: 2, says: 'panes that the measure goes through' },
    { name: 'pane', takes: 'mm', low: 4, high: 12, says: 'thickness of one pane' },
    { name: 'seam', takes: 'mm', low: 0, high: 2, says: 'thickness of one seam' },
    { name: 'frame', takes: 'mm', low: 0, high: 30, says: 'what the frames take' },
  ],
  gives: 'mm',
  sum: 'outside - panes x (pane + seam) - frame',
  help: 'Length and depth go through two panes, height through the base alone.',
  examples: [
    { rule: 'inside_size(912 mm, 2, 6 mm, 0 mm, 0 mm)', gives: '900 mm' },
    { rule: 'inside_size(610 mm, 1, 6 mm, 0 mm, 4 mm)', gives: '600 mm' },
  ],
  source: 'geometry',
  compute: ({ outside, panes, pane, seam, frame }) => {
    const wrong = belowZero({ 'Outside size': outside, Panes: panes, Pane: pane, Seam: seam, Frame: frame });
    if (wrong) return wrong;
    const taken = panes * (pane + seam) + frame;
    if (taken >= outside)
      return refused(`Glass and frame take ${sayMm(taken)} of ${sayMm(outside)}; nothing is left inside.`);
    return outside - taken;
  },
  decides: 'Builder',
  warn: (_, inside) =>
    inside < 100 - 1e-9 ? `Inside size is only ${sayMm(inside)}; is this already an inside size?` : undefined,
});
