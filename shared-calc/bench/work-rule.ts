import type { Warning } from '#shared-calc/cautions/warning.ts';
import type { BoxProblem } from '#shared-calc/engine/box-content.ts';
import { workAlone } from '#shared-calc/engine/once.ts';
import { ruleWarnings } from '#shared-calc/engine/rule-warnings.ts';
import { figureKindOfUnit, isCompound, plainUnitOf, sayKind, type Kind } from '#shared-calc/quantity/kind.ts';
import type { ReadFigure } from '#shared-calc/quantity/figure-reading.ts';
import { readFigure } from '#shared-calc/quantity/read-figure.ts';
import { fromBase } from '#shared-calc/quantity/unit.ts';
import type { BoxFault } from '#shared-calc/recipe/read-box.ts';
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
  readonly warnings: readonly Warning[];
}

export type WorkFault =
  | { readonly kind: 'number'; readonly fault: BoxFault }
  | { readonly kind: 'rule'; readonly faults: readonly RuleFault[] }
  | { readonly kind: 'no answer'; readonly problem: BoxProblem };

/** Works out one text without lines, first as a figure, as a cell does (`1/2 in` is 12.7 mm), then as a rule. */
export function workRule(text: string): Result<WorkedRule, WorkFault> {
  const figure = readFigure(text, { unit: 'number' });
  if (figure.ok) return ok(workedFigure(figure.value, text));
  const { fault } = figure;
  if (fault.kind === 'two-readings' || fault.kind === 'other-sign') return failed({ kind: 'number', fault });
  return workedRule(text);
}

function workedFigure({ value, unit }: ReadFigure, text: string): WorkedRule {
  const kind = figureKindOfUnit(unit);
  const isBare = unit.symbol === 'number';
  const place = { from: 0, to: text.length };
  const rule: Rule = { part: 'number', value: fromBase(value, unit), ...(!isBare && { unit }), ...place };
  return { rule, value, kind, kindName: sayKind(kind), unit: unitFor(rule, kind), warnings: [] };
}

function workedRule(text: string): Result<WorkedRule, WorkFault> {
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
    warnings: ruleWarnings(read.value, (line) => ({ kind: 'missing', line })),
  });
}

/** The kind's plain unit; a compound takes the result unit of the outermost function, if there is one. */
function unitFor(rule: Rule, kind: Kind): string {
  const outermost = rule.part === 'group' ? rule.of : rule;
  if (outermost.part === 'number' && outermost.unit && isCompound(kind)) return outermost.unit.symbol;
  const gives = outermost.part === 'call' ? noLines.functions.get(outermost.name)?.gives : undefined;
  return typeof gives === 'string' && isCompound(kind) ? gives : plainUnitOf(kind);
}
