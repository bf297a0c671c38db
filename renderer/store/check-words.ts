import { ruleFunctions } from '#shared-calc/engine/rule-functions.ts';
import type { Bench } from '#shared-calc/bench/open-bench.ts';
import { compileRule, type Lookups, type Value } from '#shared-calc/rule/evaluate-rule.ts';
import { ungrouped, type Rule, type RulePart } from '#shared-calc/rule/tree.ts';
import { figureWords } from '#shared-calc/quantity/figure-words.ts';
import type { LineFaces } from './line-faces.ts';

/** Works parts of rules over the boxes of one size. */
export function lookupsIn(bench: Bench, column: string): Lookups {
  return {
    valueOf: (name): Value => bench.box(column, name).value ?? { kind: 'missing', line: name },
    functions: ruleFunctions,
  };
}

/** What a part of a rule comes to in one size; `undefined` where it comes to nothing. */
function valueOfPart(rule: Rule, lookups: Lookups): number | string | boolean | undefined {
  const value = compileRule(rule, lookups)();
  return typeof value === 'object' ? undefined : value;
}

/** Longer words than this do not fit in a box. */
const ROOM = 26;

/** What is wrong in few words, where a check does not hold: `3.16 kg over`, `build in place`; empty for nothing short. */
export function shortCheck(rule: Rule | undefined, says: string, bench: Bench, parts: CheckParts): string {
  const compared = rule && ungrouped(rule);
  const gap = compared?.part === 'infix' ? gapWords(compared, bench, parts) : '';
  return gap === '' ? cureWords(says) : gap;
}

export interface CheckParts {
  readonly column: string;
  readonly faces: LineFaces;
}

/** By how much a line is over or short of what it is held against. Counts and plain numbers would say nothing so. */
function gapWords(rule: RulePart<'infix'>, bench: Bench, { column, faces }: CheckParts): string {
  const left = ungrouped(rule.left);
  const face = left.part === 'name' ? faces.of(left.name) : undefined;
  if (!face || ['each', 'number', 'choice', 'yes_no'].includes(face.line.unit)) return '';
  const lookups = lookupsIn(bench, column);
  const is = valueOfPart(rule.left, lookups);
  const wants = valueOfPart(rule.right, lookups);
  if (typeof is !== 'number' || typeof wants !== 'number' || is === wants) return '';
  const unit = face.line.unit === 'degC' ? 'K' : face.line.unit;
  return `${figureWords(Math.abs(is - wants), unit, faces.display)} ${is > wants ? 'over' : 'short'}`;
}

/** The cure stands behind a check's semicolon or colon. */
function cureWords(says: string): string {
  const cure = /[;:]\s*([^;:{}]+?)\.?$/.exec(says)?.[1] ?? '';
  return cure.length <= ROOM ? cure : '';
}
