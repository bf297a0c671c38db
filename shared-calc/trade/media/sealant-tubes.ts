import { countUp } from '#shared-calc/trade/count-up.ts';
import { belowZero, notAboveZero, sayShare } from '#shared-calc/trade/refuse-figure.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';

/** Whole tubes for a round bead, rounded up: mm2 x m = mL. */
export const sealantTubes = tradeFunction({
  name: 'sealant_tubes',
  title: 'Tubes of sealant',
  group: 'media',
  args: [
    { name: 'bead', takes: 'mm', low: 3, high: 12, says: 'thickness of the round bead' },
    { name: 'run', takes: 'm', low: 0, high: 100, says: 'length of the bead' },
    { name: 'tube', takes: 'mL', low: 50, high: 600, says: 'content of one tube' },
    { name: 'waste', takes: 'share', low: 0, high: 0.5, says: 'share left in the tube or smoothed off' },
  ],
  gives: 'each',
  sum: 'pi / 4 x bead^2 x run x (1 + waste) / tube, up to the whole tube',
  help: 'Tubes to open for a bead of this thickness.',
  examples: [
    { rule: 'sealant_tubes(6 mm, 2.69 m, 310 mL, 15 %)', gives: '1 each' },
    { rule: 'sealant_tubes(6 mm, 9.3 m, 310 mL, 15 %)', gives: '1 each' },
    { rule: 'sealant_tubes(6 mm, 9.6 m, 310 mL, 15 %)', gives: '2 each' },
  ],
  source: 'geometry; waste is common practice, no source',
  cautions: ['foamAndSealant'],
  compute: ({ bead, run, tube, waste }) =>
    belowZero({ Bead: bead, Run: run, Waste: waste }) ??
    notAboveZero({ Tube: tube }) ??
    countUp(((Math.PI / 4) * bead ** 2 * run * (1 + waste)) / tube),
  decides: 'Builder',
  warn: ({ waste }) => (waste >= 1 ? sayShare('Waste', waste) : undefined),
});
