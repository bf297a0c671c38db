import { belowZero, notAboveZero } from '#shared-calc/trade/refuse-figure.ts';
import { outsideShare } from '#shared-calc/trade/refuse-share.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';

/** K by which lamps warm the tank over the room: lamp heat over what the glass lets through. */
export const lightWarming = tradeFunction({
  name: 'light_warming',
  title: 'Lamp warming',
  group: 'air and light',
  args: [
    { name: 'power', takes: 'W', low: 0, high: 400, says: 'of all lamps' },
    { name: 'heat_share', takes: 'share', low: 0.2, high: 0.6, says: 'that stays in the tank as heat' },
    { name: 'area', takes: 'm2', low: 0.1, high: 6, says: 'open glass: what no soil, background or litter hides' },
    { name: 'passage', takes: 'W/m2/K', low: 3, high: 8, says: 'heat that a square metre lets through a degree' },
  ],
  gives: 'K',
  sum: 'power x heat_share / (passage x area)',
  help: 'How much warmer than the room the lamps make it. Add it to the hottest room day.',
  examples: [
    { rule: 'light_warming(72 W, 35 %, 1.1702 m2, 5 W/m2/K)', gives: '4.307 K' },
    { rule: 'light_warming(72 W, 28 %, 1.1702 m2, 5 W/m2/K)', gives: '3.446 K' },
  ],
  source: 'balance of heat; share and passage from memory',
  cautions: ['warmthModel'],
  compute: ({ power, heat_share, area, passage }) =>
    belowZero({ Power: power }) ??
    outsideShare({ 'Heat share': heat_share }) ??
    notAboveZero({ 'Outer area': area, 'Heat passage': passage }) ??
    (power * heat_share) / (passage * area),
});
