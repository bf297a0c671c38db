import type { Warning } from '#shared-calc/cautions/warning.ts';
import { ruleProgram, type Lookups, type RuleProgram, type Sum } from '#shared-calc/rule/evaluate-rule.ts';
import { walk, type Rule } from '#shared-calc/rule/tree.ts';
import { functionInRules } from '#shared-calc/trade/all-functions.ts';
import { warningOf, type TradeFunction } from '#shared-calc/trade/trade-function.ts';
import { unitOf, fromBase } from '#shared-calc/quantity/unit.ts';
import { inOwnUnits } from './call-function.ts';
import { ruleFunctions } from './rule-functions.ts';

/** A rule that notes the warnings of its functions while it is worked. */
interface Listening {
  readonly program: RuleProgram;
  readonly heard: Warning[];
}

/** By rule; `null` for a rule none of whose functions can warn. */
const listening = new WeakMap<Rule, Listening | null>();

/** The warnings of every function that is worked in a rule, nested ones too, each once. */
export function ruleWarnings(rule: Rule, valueOf: Lookups['valueOf']): readonly Warning[] {
  const known = listening.get(rule);
  const listener = known === undefined ? listenTo(rule) : known;
  listening.set(rule, listener);
  if (!listener) return [];
  listener.heard.length = 0;
  listener.program(valueOf);
  return [...new Map(listener.heard.map((each) => [each.says, each])).values()];
}

function listenTo(rule: Rule): Listening | null {
  const warning = new Map<string, TradeFunction>();
  walk(rule, (part) => {
    const of = part.part === 'call' ? functionInRules(part.name) : undefined;
    if (of?.warn) warning.set(of.name, of);
  });
  if (warning.size === 0) return null;
  const heard: Warning[] = [];
  const functions = new Map(ruleFunctions);
  for (const [name, of] of warning) {
    const sum = ruleFunctions.get(name);
    if (sum) functions.set(name, heardBy(of, sum, heard));
  }
  return { program: ruleProgram(rule, functions), heard };
}

function heardBy(of: TradeFunction, sum: Sum, heard: Warning[]): Sum {
  const back = typeof of.gives === 'string' ? unitOf(of.gives) : undefined;
  return (given) => {
    const answer = sum(given);
    if (typeof answer !== 'number') return answer;
    const warning = warningOf(of, inOwnUnits(of, given), back ? fromBase(answer, back) : answer);
    if (warning) heard.push(warning);
    return answer;
  };
}
