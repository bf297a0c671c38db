import { belowZero, notBelowOne } from '#shared-calc/trade/refuse-figure.ts';
import { refused, tradeFunction } from '#shared-calc/trade/trade-function.ts';

/**
 * Loose litres of one part of a mix, before blending. Refuses parts that are all zero, and a shrinkage of 1 or more.
 */
export const mixPart = tradeFunction({
  name: 'mix_part',
  title: 'One part of a mix',
  group: 'media',
  args: [
    { name: 'loose', takes: 'L', low: 0, high: 500, says: 'loose litres of the blended mix' },
    { name: 'part', takes: 'number', low: 0, high: 20, says: 'parts of this material' },
    { name: 'parts', takes: 'number', low: 1, high: 100, says: 'all parts together' },
    { name: 'blend_shrink', takes: 'share', low: 0, high: 0.4, says: 'blending shrinkage' },
  ],
  gives: 'L',
  sum: 'loose / (1 - blending shrinkage) x part / all parts',
  help: 'Litres to measure of one material. Small grains fall into the gaps of big ones, so more goes in than comes out.',
  examples: [
    { rule: 'mix_part(40.216 L, 3, 10, 12 %)', gives: '13.710 L' },
    { rule: 'mix_part(40.216 L, 2, 10, 12 %)', gives: '9.140 L' },
    { rule: 'mix_part(40.216 L, 1, 10, 12 %)', gives: '4.570 L' },
  ],
  source: 'common practice, no source',
  cautions: ['mixParts'],
  compute: ({ loose, part, parts, blend_shrink: shrink }) => {
    const wrong = belowZero({ 'Loose litres': loose }) ?? notBelowOne('Blending shrinkage', shrink);
    if (wrong) return wrong;
    return part < 0 || parts <= 0 ? refused('Parts must be positive.') : ((loose / (1 - shrink)) * part) / parts;
  },
  decides: 'Builder',
  warn: ({ part, parts }) =>
    part > parts * (1 + 1e-9) ? `${part} parts are more than all ${parts} parts together.` : undefined,
});
