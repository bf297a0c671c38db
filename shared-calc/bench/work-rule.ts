import type { BoxProblem } from '#shared-calc/engine/box-content.ts';
import { workAlone } from '#shared-calc/engine/once.ts';
import { isCompound, plainUnitOf, sayKind, type Kind } from '#shared-calc/quantity/kind.ts';
import { noLines } from '#shared-calc/recipe/scope.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { checkRule } from '#shared-calc/rule/check-rule.ts';
import type { RuleFault } from '#shared-calc/rule/fault.ts';
import { readRule } from '#shared-calc/rule/read-rule.ts';
import type { Rule } from '#shared-calc/rule/tree.ts';

export interface WorkedRule {
  readonly rule: Rule;
  readonly value: number | string | boolean;
  readonly kind: Kind;
  /** The kind in words, and the unit its value is given in. */
  readonly kindName: string;
  readonly unit: string;
}

export type WorkFault =
  | { readonly kind: 'rule'; readonly faults: readonly RuleFault[] }
  | { readonly kind: 'no answer'; readonly problem: BoxProblem };

/** Works out one rule of literals and functions, without lines. */
export function workRule(text: string): Result<WorkedRule, WorkFault> {
  const read = readRule(text);
  if (!read.ok) return failed({ kind: 'rule', faults: [read.fault] });
  const checked = checkRule(read.value, noLines);
  if (checked.faults.length > 0 || !checked.kind) return failed({ kind: 'rule', faults: checked.faults });
  const worked = workAlone(read.value);
  if (!worked.known) return failed({ kind: 'no answer', problem: worked.problem });
  return ok({
    rule: read.value,
    value: worked.value,
    kind: checked.kind,
    kindName: sayKind(checked.kind),
    unit: unitFor(read.value, checked.kind),
  });
}

/** The kind's plain unit; a compound takes the result unit of the outermost function, if there is one. */
function unitFor(rule: Rule, kind: Kind): string {
  const outermost = rule.part === 'group' ? rule.of : rule;
  if (outermost.part === 'number' && outermost.unit && isCompound(kind)) return outermost.unit.symbol;
  const gives = outermost.part === 'call' ? noLines.functions.get(outermost.name)?.gives : undefined;
  return typeof gives === 'string' && isCompound(kind) ? gives : plainUnitOf(kind);
}
