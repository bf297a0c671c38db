import { unreachable } from '#shared-calc/result.ts';
import type { Rule, RulePart } from './tree.ts';

export interface RuleParts {
  readonly name: (name: string) => string;
  readonly literal: (literal: RulePart<'number'>) => string;
  /** Between the arguments of a function: `;` where the decimal comma is set. */
  readonly between?: ',' | ';';
}

/** A rule as text again, with even spacing; `parts` gives the text of names and figures. */
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
      return writeCall(rule, parts);
    default:
      return unreachable(rule);
  }
}

function writeCall({ name, args }: RulePart<'call'>, parts: RuleParts): string {
  const { between = ',' } = parts;
  return `${name}(${args.map((arg) => writeRule(arg, parts)).join(`${between} `)})`;
}

/** A figure below zero next to an operator gets brackets, so that `5 - -3` is clear. */
function writeBeside(rule: Rule, parts: RuleParts): string {
  const text = writeRule(rule, parts);
  return text.startsWith('-') && (rule.part === 'name' || rule.part === 'number') ? `(${text})` : text;
}
