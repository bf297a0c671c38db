import { unreachable } from '#shared-calc/result.ts';
import type { FigureProblem } from './fault.ts';
import { generalSums, type Scalar } from './general-sums.ts';
import { sumOfSign } from './sum-of-sign.ts';
import { literalBase, type Rule, type RulePart } from './tree.ts';

/** What a rule comes to, in base units, or what it ran into. */
export type Value = Scalar | FigureProblem;

/** A function as the evaluator calls it, over base units; arguments left out are not there. */
export type Sum = (given: readonly Scalar[]) => Scalar | { readonly refused: string };

export interface Lookups {
  readonly valueOf: (name: string) => Value;
  readonly functions: ReadonlyMap<string, Sum>;
}

type Work = () => Value;

const missingFunction: Sum = () => ({ refused: 'No such function.' });

/**
 * A rule as a function that works it anew at every call. It shares no code with the engine but the sums of the
 * functions, and says the same. `if` and `pick` work only what they need.
 */
export function compileRule(rule: Rule, lookups: Lookups): Work {
  switch (rule.part) {
    case 'number':
      return constant(literalBase(rule));
    case 'text':
      return constant(rule.text);
    case 'yes_no':
      return constant(rule.value);
    case 'name':
      return () => lookups.valueOf(rule.name);
    case 'group':
      return compileRule(rule.of, lookups);
    case 'prefix':
      return compilePrefix(rule, lookups);
    case 'infix':
      return compileInfix(rule, lookups);
    case 'call':
      return compileCall(rule, lookups);
    default:
      return unreachable(rule);
  }
}

/** Stands where a call has too few arguments, which checking refuses. */
function nothing(): Value {
  return { kind: 'not-a-number' };
}

function constant(value: Value): Work {
  return () => value;
}

function isProblem(value: Value): value is FigureProblem {
  return typeof value === 'object';
}

function compilePrefix(rule: RulePart<'prefix'>, lookups: Lookups): Work {
  const of = compileRule(rule.of, lookups);
  if (rule.sign === '+') return of;
  return () => {
    const value = of();
    if (isProblem(value)) return value;
    return typeof value === 'number' ? 0 - value : { kind: 'not-a-number' };
  };
}

const arithmetic: Readonly<Record<string, (left: number, right: number) => number>> = {
  '+': (left, right) => left + right,
  '-': (left, right) => left - right,
  '*': (left, right) => left * right,
  '/': (left, right) => left / right,
};

function compileInfix(rule: RulePart<'infix'>, lookups: Lookups): Work {
  const parts = [compileRule(rule.left, lookups), compileRule(rule.right, lookups)] as const;
  const sum = sumOfSign(rule.sign);
  if (sum) return compileSum(sum, generalSums.get(sum) ?? missingFunction, parts);
  const join = arithmetic[rule.sign];
  const divides = rule.sign === '/';
  return () => {
    const left = parts[0]();
    if (isProblem(left)) return left;
    const right = parts[1]();
    if (isProblem(right)) return right;
    if (!join || typeof left !== 'number' || typeof right !== 'number') return { kind: 'not-a-number' };
    return divides && right === 0 ? { kind: 'divided-by-zero' } : finite(join(left, right));
  };
}

/** Works every argument first; the first problem among them is the answer. */
function compileSum(name: string, sum: Sum, args: readonly Work[]): Work {
  return () => {
    const given: Scalar[] = [];
    for (const arg of args) {
      const value = arg();
      if (isProblem(value)) return value;
      given.push(value);
    }
    const answer = sum(given);
    return typeof answer === 'object' ? { kind: 'refused', fn: name, says: answer.refused } : finite(answer);
  };
}

const logic: Readonly<Record<string, Sum>> = {
  and: (given) => given.every((each) => each === true),
  or: (given) => given.includes(true),
  not: ([given]) => given === false,
  pi: () => Math.PI,
};

function compileCall(rule: RulePart<'call'>, lookups: Lookups): Work {
  const args = rule.args.map((arg) => compileRule(arg, lookups));
  if (rule.name === 'if') return compileIf(args);
  if (rule.name === 'pick') return compilePick(args);
  const sum = lookups.functions.get(rule.name) ?? generalSums.get(rule.name) ?? logic[rule.name];
  return compileSum(rule.name, sum ?? missingFunction, args);
}

function compileIf([when = nothing, then = nothing, otherwise = nothing]: readonly Work[]): Work {
  return () => {
    const holds = when();
    if (isProblem(holds)) return holds;
    return holds === true ? then() : otherwise();
  };
}

function compilePick([choice = nothing, ...pairs]: readonly Work[]): Work {
  return () => {
    const chosen = choice();
    if (isProblem(chosen)) return chosen;
    for (let at = 0; at < pairs.length; at += 2) {
      const [when = nothing, figure = nothing] = pairs.slice(at, at + 2);
      const fits = fitsChoice(chosen, when());
      if (fits !== false) return fits === true ? figure() : fits;
    }
    return { kind: 'refused', fn: 'pick', says: 'pick found none of its choices.' };
  };
}

function fitsChoice(chosen: Scalar, when: Value): boolean | FigureProblem {
  return isProblem(when) ? when : generalSums.get('same')?.([chosen, when]) === true;
}

function finite(value: Scalar): Value {
  return typeof value === 'number' && !Number.isFinite(value) ? { kind: 'not-a-number' } : value;
}
