import { ruleFunctions } from '#shared-calc/engine/rule-functions.ts';
import type { Bench } from '#shared-calc/bench/open-bench.ts';
import { compileRule, type Lookups, type Value } from '#shared-calc/rule/evaluate-rule.ts';
import { ungrouped, type Rule, type RulePart } from '#shared-calc/rule/tree.ts';
import { figureWords } from '#shared-calc/quantity/figure-words.ts';
import type { LineFaces } from './line-faces.ts';

/** Evaluates parts of rules over the cells of one size. */
function lookupsIn(bench: Bench, column: string): Lookups {
  return {
    valueOf: (name): Value => bench.box(column, name).value ?? { kind: 'missing', line: name },
    functions: ruleFunctions,
  };
}

/** The value of a part of a rule in one size; `undefined` if it has none. */
function valueOfPart(rule: Rule, lookups: Lookups): number | string | boolean | undefined {
  const value = compileRule(rule, lookups)();
  return typeof value === 'object' ? undefined : value;
}

/** Longer words do not fit in a cell, characters. */
const ROOM = 26;

/** What is wrong, in few words, when a check fails: `3.16 kg over`, `build in place`. Empty if nothing short fits. */
export function shortCheck(rule: Rule | undefined, says: string, bench: Bench, parts: CheckParts): string {
  const compared = rule && ungrouped(rule);
  const gap = compared?.part === 'infix' ? gapWords(compared, bench, parts) : '';
  return gap === '' ? cureWords(says) : gap;
}

export interface CheckParts {
  readonly column: string;
  readonly faces: LineFaces;
}

/**
 * How far a line is over or short of its limit. Without a unit the gap would say nothing, so counts and plain
 * numbers give none.
 */
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

/** The cure follows the semicolon or colon of a check's sentence. */
function cureWords(says: string): string {
  const cure = /[;:]\s*([^;:{}]+?)\.?$/.exec(says)?.[1] ?? '';
  return cure.length <= ROOM ? cure : '';
}
