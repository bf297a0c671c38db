import { countUp } from '#shared-calc/trade/count-up.ts';
import { belowZero, notAboveZero } from '#shared-calc/trade/refuse-figure.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';

/** Whole cans of foam for a background, rounded up; the yield is what remains after carving. */
export const foamCans = tradeFunction({
  name: 'foam_cans',
  title: 'Cans of foam',
  group: 'media',
  args: [
    { name: 'area', takes: 'm2', low: 0, high: 10, says: 'area to foam' },
    { name: 'thickness', takes: 'mm', low: 5, high: 100, says: 'thickness of the foam' },
    { name: 'yield', takes: 'L', low: 5, high: 60, says: 'litres that one can fills, as placed' },
  ],
  gives: 'each',
  sum: 'area x thickness / yield, up to the whole can',
  help: 'Cans to open for a foamed background. Take 70 to 75 % of the free rise, for what is carved off.',
  examples: [
    { rule: 'foam_cans(0.54 m2, 25 mm, 22 L)', gives: '1 each' },
    { rule: 'foam_cans(1 m2, 25 mm, 22 L)', gives: '2 each' },
  ],
  source: 'yield from memory',
  cautions: ['foamAndSealant'],
  compute: ({ area, thickness, yield: litres }) =>
    belowZero({ Area: area, Thickness: thickness }) ??
    notAboveZero({ Yield: litres }) ??
    countUp((area * thickness) / litres),
});
