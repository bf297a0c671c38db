import type { Bench } from '#shared-calc/bench/open-bench.ts';
import { ruleFunctions } from '#shared-calc/engine/rule-functions.ts';
import { plainUnitOf, type Kind } from '#shared-calc/quantity/kind.ts';
import { fromBase, unitOf } from '#shared-calc/quantity/unit.ts';
import { checkRule } from '#shared-calc/rule/check-rule.ts';
import { compileRule, type Lookups } from '#shared-calc/rule/evaluate-rule.ts';
import { ungrouped, type Rule, type RulePart } from '#shared-calc/rule/tree.ts';

/** By how much a check holds. */
export interface CheckMargin {
  /** The figure and its limit, in `unit`. */
  readonly has: number;
  readonly against: number;
  /** Room to spare, in `stepUnit`; below zero where the check does not hold. */
  readonly spare: number;
  readonly unit: string;
  /** The same as `unit`, but K if the figures are temperatures. */
  readonly stepUnit: string;
}

/** `undefined` for a check that does not compare two figures, or whose figures are not known yet. */
export function checkMargin(bench: Bench, column: string, check: string): CheckMargin | undefined {
  const { rule } = bench.box(column, check);
  const compared = rule && ungrouped(rule);
  if (compared?.part !== 'infix' || !/^[<>]=?$/.test(compared.sign)) return undefined;
  const kind = checkRule(compared.left, bench.scope()).kind;
  const lookups = lookupsOf(bench, column);
  const [has, against] = [compared.left, compared.right].map((side) => compileRule(side, lookups)());
  if (!kind || typeof has !== 'number' || typeof against !== 'number') return undefined;
  return marginOf(compared, { has, against }, { kind, unit: unitFor(compared.left, kind, bench) });
}

interface Compared {
  readonly has: number;
  readonly against: number;
}

function marginOf(
  { sign }: RulePart<'infix'>,
  { has, against }: Compared,
  { kind, unit }: { readonly kind: Kind; readonly unit: string },
): CheckMargin {
  const stepUnit = kind.is === 'figure' && kind.sort === 'reading' ? 'K' : unit;
  const spare = sign.startsWith('<') ? against - has : has - against;
  return {
    has: fromBase(has, unitOf(unit)),
    against: fromBase(against, unitOf(unit)),
    spare: fromBase(spare, unitOf(stepUnit)),
    unit,
    stepUnit,
  };
}

/** The unit of the line if the side is one line, otherwise the plain unit of its kind. */
function unitFor(side: Rule, kind: Kind, bench: Bench): string {
  const part = ungrouped(side);
  const line = part.part === 'name' ? bench.input().lines.find((each) => each.name === part.name) : undefined;
  return line?.unit ?? plainUnitOf(kind);
}

function lookupsOf(bench: Bench, column: string): Lookups {
  return {
    functions: ruleFunctions,
    valueOf: (name) => bench.box(column, name).value ?? { kind: 'missing', line: name },
  };
}
