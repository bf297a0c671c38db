import { toBase, type Unit } from '#shared-calc/quantity/unit.ts';

/** A range of the rule's text: from the first character up to `to`, exclusive. */
export interface Place {
  readonly from: number;
  readonly to: number;
}

export type CompareSign = '=' | '<>' | '<' | '<=' | '>' | '>=';
export type Sign = '+' | '-' | '*' | '/' | '^' | CompareSign;

/** A parsed rule; every part has its place. */
export type Rule =
  | (Place & { readonly part: 'number'; readonly value: number; readonly unit?: Unit })
  | (Place & { readonly part: 'text'; readonly text: string })
  | (Place & { readonly part: 'yes_no'; readonly value: boolean })
  | (Place & { readonly part: 'name'; readonly name: string })
  | (Place & { readonly part: 'call'; readonly name: string; readonly at: Place; readonly args: readonly Rule[] })
  | (Place & { readonly part: 'prefix'; readonly sign: '+' | '-'; readonly of: Rule })
  | (Place & { readonly part: 'infix'; readonly sign: Sign; readonly left: Rule; readonly right: Rule })
  | (Place & { readonly part: 'group'; readonly of: Rule });

export type RulePart<P extends Rule['part']> = Extract<Rule, { readonly part: P }>;

/** Names of other lines that a rule reads, each once, in order of first use. */
export function namesIn(rule: Rule): readonly string[] {
  const known = namesOf.get(rule);
  if (known) return known;
  const found = new Set<string>();
  walk(rule, (part) => {
    if (part.part === 'name') found.add(part.name);
  });
  const names = [...found];
  namesOf.set(rule, names);
  return names;
}

const namesOf = new WeakMap<Rule, readonly string[]>();

/** Visits a rule and all its parts, outermost first. */
export function walk(rule: Rule, visit: (part: Rule) => void): void {
  visit(rule);
  for (const part of partsOf(rule)) walk(part, visit);
}

function partsOf(rule: Rule): readonly Rule[] {
  if (rule.part === 'call') return rule.args;
  if (rule.part === 'prefix' || rule.part === 'group') return [rule.of];
  return rule.part === 'infix' ? [rule.left, rule.right] : [];
}

/** A part without the brackets around it. */
export function ungrouped(rule: Rule): Rule {
  let part = rule;
  while (part.part === 'group') part = part.of;
  return part;
}

/** A literal in coherent base units: `40 mm` is 0.04, `98.6 degF` is 37. */
export function literalBase(literal: RulePart<'number'>): number {
  return literal.unit ? toBase(literal.value, literal.unit) : literal.value;
}
