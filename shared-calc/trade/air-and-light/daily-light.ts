import { belowZero, notAboveZero } from '#shared-calc/trade/refuse-figure.ts';
import { outsideShare } from '#shared-calc/trade/refuse-share.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';

const MOL_PER_UMOL_HOUR = 0.0036; // 3600 s of 1e-6 mol
const LONGEST_DAY_H = 16;

/** mol of light on a square metre a day. Warns over 16 hours. */
export const dailyLight = tradeFunction({
  name: 'daily_light',
  title: 'Daily light',
  group: 'air and light',
  args: [
    { name: 'output', takes: 'umol/s', low: 10, high: 400, says: 'of the lamps: W x umol/J' },
    { name: 'use', takes: 'share', low: 0.3, high: 0.6, says: 'that reaches the plants' },
    { name: 'through', takes: 'share', low: 0.5, high: 1, says: 'through cover glass 0.90, a screen 0.75, both 0.675' },
    { name: 'area', takes: 'm2', low: 0.02, high: 3, says: 'inside floor' },
    { name: 'hours', takes: 'h/d', low: 8, high: LONGEST_DAY_H, says: 'that the lamps are on' },
  ],
  gives: 'mol/m2/d',
  sum: 'output x use x through / area x hours x 0.0036',
  help: 'Light that a day gives the plants: ground plants and ferns 3 to 6, bromeliad colour 6 to 10.',
  examples: [
    { rule: 'daily_light(68.4 umol/s, 45 %, 67.5 %, 0.4005 m2, 12 h/d)', gives: '2.241 mol/m2/d' },
    { rule: 'daily_light(68.4 umol/s, 45 %, 90 %, 0.4005 m2, 12 h/d)', gives: '2.988 mol/m2/d' },
  ],
  source: 'DLI = PPFD x hours x 0.0036; shares from memory',
  cautions: ['lightAtSoil'],
  compute: ({ output, use, through, area, hours }) =>
    belowZero({ 'Light output': output, Hours: hours }) ??
    outsideShare({ 'The use of light': use, 'Light let through': through }) ??
    notAboveZero({ 'Floor area': area }) ??
    ((output * use * through) / area) * hours * MOL_PER_UMOL_HOUR,
  decides: 'Keeper, vet',
  warn: ({ hours }) => (hours > LONGEST_DAY_H + 1e-9 ? 'Animals need a night.' : undefined),
});
