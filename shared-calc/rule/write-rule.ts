import { unreachable } from '#shared-calc/result.ts';
import type { Rule, RulePart } from './tree.ts';

export interface RuleParts {
  readonly name: (name: string) => string;
  readonly literal: (literal: RulePart<'number'>) => string;
}

/** A rule as text again, evenly spaced, with names and figures as `parts` would have them. */
export function writeRule(rule: Rule, parts: RuleParts): string {
  switch (rule.part) {
    case 'number':
      return parts.literal(rule);
    case 'text':
      return `"${rule.text.replaceAll('"', '""')}"`;
    case 'yes_no':
      return rule.value ? 'yes' : 'no';
    case 'name':
      return parts.name(rule.name);
    case 'group':
      return `(${writeRule(rule.of, parts)})`;
    case 'prefix':
      return rule.sign + writeBeside(rule.of, parts);
    case 'infix':
      return `${writeBeside(rule.left, parts)} ${rule.sign} ${writeBeside(rule.right, parts)}`;
    case 'call':
      return `${rule.name}(${rule.args.map((arg) => writeRule(arg, parts)).join(', ')})`;
    default:
      return unreachable(rule);
  }
}

/** A figure below zero beside a sign stands in brackets, so that `5 - -3` reads as what it is. */
function writeBeside(rule: Rule, parts: RuleParts): string {
  const text = writeRule(rule, parts);
  return text.startsWith('-') && (rule.part === 'name' || rule.part === 'number') ? `(${text})` : text;
}
