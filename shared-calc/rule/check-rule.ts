import { PLAIN } from '#shared-calc/quantity/dimension.ts';
import { figureKind, figureKindOfUnit, YES_NO, type Kind } from '#shared-calc/quantity/kind.ts';
import { unreachable } from '#shared-calc/result.ts';
import { callKind, checkCount } from './check-call.ts';
import type { RuleFault } from './fault.ts';
import { generalFunctions } from './general.ts';
import { infixKind, type Report } from './infix-kind.ts';
import { isReading } from './kind-fits.ts';
import { nearestName } from './nearest.ts';
import type { Signature } from './signature.ts';
import type { Rule, RulePart } from './tree.ts';

/** What a rule may read and call. A line whose kind is not known yet is only in `lineNames`. */
export interface RuleScope {
  readonly kindOfLine: (name: string) => Kind | undefined;
  readonly lineNames: readonly string[];
  readonly functions: ReadonlyMap<string, Signature>;
}

export interface CheckedRule {
  /** `undefined` if a fault or an unknown kind leaves it open. */
  readonly kind: Kind | undefined;
  /** All faults found, in order of place. */
  readonly faults: readonly RuleFault[];
}

/** Works out the kind of every operator and function of a rule. A fault in one part does not hide those in others. */
export function checkRule(rule: Rule, scope: RuleScope): CheckedRule {
  const faults: RuleFault[] = [];
  const kind = kindOf(rule, scope, (fault) => faults.push(fault));
  return { kind, faults: faults.toSorted((a, b) => a.from - b.from || a.to - b.to) };
}

function kindOf(rule: Rule, scope: RuleScope, report: Report): Kind | undefined {
  switch (rule.part) {
    case 'number':
      return rule.unit ? figureKindOfUnit(rule.unit) : figureKind(PLAIN);
    case 'text':
      return { is: 'choice', options: [rule.text] };
    case 'yes_no':
      return YES_NO;
    case 'name':
      return nameKind(rule, scope, report);
    case 'group':
      return kindOf(rule.of, scope, report);
    case 'prefix':
      return prefixKind(rule, kindOf(rule.of, scope, report), report);
    case 'infix':
      return infixKind(rule, kindOf(rule.left, scope, report), kindOf(rule.right, scope, report), report);
    case 'call':
      return anyCallKind(rule, scope, report);
    default:
      return unreachable(rule);
  }
}

function nameKind(rule: RulePart<'name'>, scope: RuleScope, report: Report): Kind | undefined {
  const { name, from, to } = rule;
  const kind = scope.kindOfLine(name);
  if (kind || scope.lineNames.includes(name)) return kind;
  if (scope.functions.has(name) || generalFunctions.has(name)) {
    report({ kind: 'not-a-call', name, from, to });
    return undefined;
  }
  const near = nearestName(name, scope.lineNames);
  report({ kind: 'unknown-name', name, ...(near !== undefined && { near }), from, to });
  return undefined;
}

function prefixKind(rule: RulePart<'prefix'>, kind: Kind | undefined, report: Report): Kind | undefined {
  const { from, to } = rule;
  if (!kind) return undefined;
  if (kind.is !== 'figure') report({ kind: 'needs-figure', given: kind, from, to });
  else if (isReading(kind)) report({ kind: 'reading-alone', sign: rule.sign, from, to });
  else return kind;
  return undefined;
}

function anyCallKind(rule: RulePart<'call'>, scope: RuleScope, report: Report): Kind | undefined {
  const kinds = rule.args.map((arg) => kindOf(arg, scope, report));
  const trade = scope.functions.get(rule.name);
  if (trade) return callKind(rule, kinds, trade, report);
  if (generalFunctions.has(rule.name)) return generalKind(rule, kinds, report);
  const near = nearestName(rule.name, [...scope.functions.keys(), ...generalFunctions.keys()]);
  report({ kind: 'unknown-function', name: rule.name, ...(near !== undefined && { near }), ...rule.at });
  return undefined;
}

function generalKind(call: RulePart<'call'>, kinds: readonly (Kind | undefined)[], report: Report): Kind | undefined {
  const general = generalFunctions.get(call.name);
  if (!general) return undefined;
  const given = call.args.length;
  const unpaired = call.name === 'pick' && given > 0 && given % 2 === 0;
  const counted = checkCount(call, unpaired ? { least: given + 1 } : general);
  if (counted) report(counted);
  const kind = general.kindOf({ call, kinds, report });
  return counted ? undefined : kind;
}
