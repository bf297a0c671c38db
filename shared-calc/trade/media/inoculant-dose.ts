import { belowZero } from '#shared-calc/trade/refuse-figure.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';

/** Grams of inoculant for loose litres of mix. */
export const inoculantDose = tradeFunction({
  name: 'inoculant_dose',
  title: 'Dose of inoculant',
  group: 'media',
  args: [
    { name: 'loose', takes: 'L', low: 0, high: 500, says: 'loose litres of mix' },
    { name: 'rate', takes: 'g/L', low: 0, high: 5, says: 'powder for a litre' },
  ],
  gives: 'g',
  sum: 'loose x rate',
  help: 'Powder to stir into the mix. What the label says goes first.',
  examples: [
    { rule: 'inoculant_dose(20.69 L, 1 g/L)', gives: '20.69 g' },
    { rule: 'inoculant_dose(40.216 L, 0.5 g/L)', gives: '20.108 g' },
  ],
  source: 'common practice, no source',
  cautions: ['inoculant'],
  compute: ({ loose, rate }) => belowZero({ 'Loose litres': loose, Rate: rate }) ?? loose * rate,
});
