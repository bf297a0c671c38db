import { sayUnits } from './say-units.ts';

/** A sentence on a paper, with its units in their written form and days in full: `7 d` as `7 days`. */
export function sayOnPaper(sentence: string): string {
  return sayUnits(sentence)
    .replaceAll(/(?<![\d.,])1\u00a0d\b/g, '1\u00a0day')
    .replaceAll(/(?<=\d)\u00a0d\b/g, '\u00a0days');
}
