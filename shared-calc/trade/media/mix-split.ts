import { belowZero, notBelowOne } from '#shared-calc/trade/refuse-figure.ts';
import { listFunction, refused } from '#shared-calc/trade/trade-function.ts';

/** Litres of each part that blend to these loose litres; small grains fill the gaps of big ones. */
export function mixSplit(
  loose: number,
  parts: readonly number[],
  blendShrink: number,
): readonly number[] | { readonly refused: string } {
  const all = parts.reduce((sum, part) => sum + part, 0);
  const wrong = belowZero({ 'Loose litres': loose }) ?? notBelowOne('Blending shrinkage', blendShrink);
  if (wrong) return wrong;
  if (all <= 0 || parts.some((part) => part < 0)) return refused('Parts must be positive.');
  return parts.map((part) => ((loose / (1 - blendShrink)) * part) / all);
}

export const mixSplitEntry = listFunction({
  name: 'MIX_SPLIT',
  title: 'Split a mix',
  group: 'media',
  takes: 'loose litres, the parts, blending shrinkage',
  gives: 'litres of each part',
  sum: 'loose / (1 - blending shrinkage) x part / all parts',
  help: 'Litres to measure of each material. In rules: mix_part, one part at a time.',
  examples: [
    { rule: '40.216 L, parts 3 : 3 : 2 : 1 : 1, shrinkage 12 %', gives: '13.710, 13.710, 9.140, 4.570, 4.570 L' },
    { rule: '10 L, parts 1 : 1, no shrinkage', gives: '5, 5 L' },
  ],
  source: 'common practice, no source',
  cautions: ['mixParts'],
});
