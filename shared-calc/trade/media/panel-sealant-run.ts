import { countDown } from '#shared-calc/trade/count-up.ts';
import { belowZero, notAboveZero } from '#shared-calc/trade/refuse-figure.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';

/**
 * Metres of sealant behind a background: its outline, plus a line over its width for every whole spacing of its height.
 */
export const panelSealantRun = tradeFunction({
  name: 'panel_sealant_run',
  title: 'Sealant behind a background',
  group: 'media',
  args: [
    { name: 'width', takes: 'mm', low: 0, high: 6000, says: 'width of the background' },
    { name: 'height', takes: 'mm', low: 100, high: 3000, says: 'height of the background' },
    { name: 'spacing', takes: 'mm', low: 40, high: 200, says: 'from ribbon to ribbon' },
  ],
  gives: 'm',
  sum: '2 x (width + height) + whole spacings in the height x width',
  help: 'Length of the bead that glues a background on: all round, and ribbons across.',
  examples: [
    { rule: 'panel_sealant_run(900 mm, 600 mm, 80 mm)', gives: '9.3 m' },
    { rule: 'panel_sealant_run(600 mm, 600 mm, 80 mm)', gives: '6.6 m' },
  ],
  source: 'common practice, no source',
  compute: ({ width, height, spacing }) =>
    belowZero({ Width: width, Height: height }) ??
    notAboveZero({ Spacing: spacing }) ??
    (2 * (width + height) + countDown(height / spacing) * width) / 1000,
});
