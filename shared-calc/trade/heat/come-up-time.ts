import { firstRefusal } from '#shared-calc/trade/first-refusal.ts';
import { belowZero, notAboveZero } from '#shared-calc/trade/refuse-figure.ts';
import { sayPlain } from '#shared-calc/trade/say-plain.ts';
import { tradeFunction, type Answer } from '#shared-calc/trade/trade-function.ts';

export interface ComeUp {
  /** Minutes in which the gap between core and heat falls to a tenth. */
  readonly tenfold: number;
  /** The lag factor of the core at the start; 1.4 for leaves. */
  readonly lag: number;
  /** degC of the oven, the water or the steam. */
  readonly heat: number;
  readonly start: number;
  readonly target: number;
}

/** Minutes until the core is at the target; 0 if it starts there. Not rounded. */
export function comeUpMinutes({ tenfold, lag, heat, start, target }: ComeUp): Answer {
  const refusal = firstRefusal([
    [target >= heat, `The core can never reach ${sayPlain(target)} C in a medium at ${sayPlain(heat)} C.`],
  ]);
  const wrong = refusal ?? belowZero({ 'The heating time (f)': tenfold }) ?? notAboveZero({ 'The lag (j)': lag });
  if (wrong) return wrong;
  if (start >= target) return 0;
  return Math.max(0, tenfold * Math.log10((lag * (heat - start)) / (heat - target)));
}

/** Minutes until the core is at the target. Refuses a target at or above the heat. */
export const comeUpTime = tradeFunction({
  name: 'come_up_time',
  title: 'Heat-up time',
  group: 'heat',
  args: [
    {
      name: 'heating_minutes',
      takes: 'min',
      low: 1,
      high: 60,
      says: 'f: loose leaves on a tray 10 to 15, a packed bag in steam 12, a deep dry tray 25',
    },
    { name: 'lag', takes: 'number', low: 1, high: 2, says: 'j: about 1.4' },
    { name: 'heat', takes: 'degC', low: 40, high: 140, says: 'of the oven, the water or the steam' },
    { name: 'start', takes: 'degC', low: -10, high: 60, says: 'of the core at first' },
    { name: 'target', takes: 'degC', low: 40, high: 135, says: 'of the core' },
  ],
  gives: 'min',
  sum: 'heating_minutes x log10(lag x (heat - start) / (heat - target))',
  help: 'How long the middle of the load takes to get there. The heating minutes are from memory: measure yours with a probe.',
  examples: [
    { rule: 'come_up_time(12 min, 1.4, 100 degC, 20 degC, 82 degC)', gives: '9.53 min' },
    { rule: 'come_up_time(25 min, 1.4, 105 degC, 20 degC, 90 degC)', gives: '22.49 min' },
  ],
  source: 'straight line of a heating curve; the minutes are from memory',
  cautions: ['coreProbe'],
  compute: ({ heating_minutes, lag, heat, start, target }) =>
    comeUpMinutes({ tenfold: heating_minutes, lag, heat, start, target }),
});
