import type { CompareSign, Sign } from './tree.ts';

const sums: Readonly<Record<CompareSign, string>> & Readonly<Partial<Record<Sign, string>>> = {
  '=': 'same',
  '<>': 'differs',
  '<': 'less',
  '<=': 'at_most',
  '>': 'more',
  '>=': 'at_least',
};

/** The name in `generalSums` of an operator's sum; `undefined` for + - * /, which are the engine's own. */
export function sumOfSign(sign: Sign): string | undefined {
  if (sign === '^') return 'power';
  return sums[sign];
}
