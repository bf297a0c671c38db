import type { TradeFunction } from '#shared-calc/trade/trade-function.ts';
import { plainDisplay } from '#shared-calc/quantity/shown-unit.ts';
import { exampleTexts, tryFunction } from './try-function.ts';

/**
 * A function's own refusals: runs its example with another kind in place of its first figure, and with a negative
 * figure there.
 */
export function whenRefused(entry: TradeFunction): readonly string[] {
  const texts = exampleTexts(entry, plainDisplay);
  const at = entry.args.findIndex(({ takes }) => typeof takes === 'string' && takes !== 'any' && takes !== 'yes_no');
  const takes = entry.args[at]?.takes;
  if (typeof takes !== 'string') return [];
  const wrongKind = takes === 'L' ? '40 mm' : '40 L';
  const sentences = [wrongKind, '-1'].flatMap((text) => {
    const tried = tryFunction(entry, texts.with(at, text), plainDisplay);
    return tried.faults.find((fault) => fault !== undefined) ?? tried.wrong ?? [];
  });
  return [...new Set(sentences)];
}
