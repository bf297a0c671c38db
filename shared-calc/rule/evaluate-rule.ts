import { unreachable } from '#shared-calc/result.ts';
import type { FigureProblem } from './fault.ts';
import { generalSums, type Scalar } from './general-sums.ts';
import { sumOfSign } from './sum-of-sign.ts';
import { literalBase, type Rule, type RulePart } from './tree.ts';

/** The result of a rule, in base units, or the problem that stopped it. */
export type Value = Scalar | FigureProblem;

/** A function as the evaluator calls it, over base units; optional arguments may be missing. */
export type Sum = (given: readonly Scalar[]) => Scalar | { readonly refused: string };

export interface Lookups {
  readonly valueOf: (name: string) => Value;
  readonly functions: ReadonlyMap<string, Sum>;
}

type Functions = Lookups['functions'];

/** A compiled rule, or part of one: its result over the lines that `valueOf` gives. */
export type RuleProgram = (valueOf: Lookups['valueOf']) => Value;

const missingFunction: Sum = () => ({ refused: 'No such function.' });

/** A rule over fixed lookups, as a function that evaluates it at every call. */
export function compileRule(rule: Rule, { valueOf, functions }: Lookups): () => Value {
  const program = ruleProgram(rule, functions);
  return () => program(valueOf);
}

/**
 * A rule compiled to closures. It shares only the functions' own sums with the graph engine, and gives the same
 * results. `if` and `pick` evaluate only the chosen branch.
 */
export function ruleProgram(rule: Rule, functions: Functions): RuleProgram {
  switch (rule.part) {
    case 'number':
      return constant(literalBase(rule));
    case 'text':
      return constant(rule.text);
    case 'yes_no':
      return constant(rule.value);
    case 'name':
      return (valueOf) => valueOf(rule.name);
    case 'group':
      return ruleProgram(rule.of, functions);
    case 'prefix':
      return compilePrefix(rule, functions);
    case 'infix':
      return compileInfix(rule, functions);
    case 'call':
      return compileCall(rule, functions);
    default:
      return unreachable(rule);
  }
}

/** Replaces a missing argument; checking refuses calls with too few. */
function nothing(): Value {
  return { kind: 'not-a-number' };
}

function constant(value: Value): RuleProgram {
  return () => value;
}

function isProblem(value: Value): value is FigureProblem {
  return typeof value === 'object';
}

function compilePrefix(rule: RulePart<'prefix'>, functions: Functions): RuleProgram {
  const of = ruleProgram(rule.of, functions);
  if (rule.sign === '+') return of;
  return (valueOf) => {
    const value = of(valueOf);
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

function compileInfix(rule: RulePart<'infix'>, functions: Functions): RuleProgram {
  const parts = [ruleProgram(rule.left, functions), ruleProgram(rule.right, functions)] as const;
  const sum = sumOfSign(rule.sign);
  if (sum) return compileSum(sum, generalSums.get(sum) ?? missingFunction, parts);
  const join = arithmetic[rule.sign];
  const divides = rule.sign === '/';
  return (valueOf) => {
    const left = parts[0](valueOf);
    if (isProblem(left)) return left;
    const right = parts[1](valueOf);
    if (isProblem(right)) return right;
    if (!join || typeof left !== 'number' || typeof right !== 'number') return { kind: 'not-a-number' };
    return divides && right === 0 ? { kind: 'divided-by-zero' } : finite(join(left, right));
  };
}

/** Evaluates every argument first; the first problem among them is the result. */
function compileSum(name: string, sum: Sum, args: readonly RuleProgram[]): RuleProgram {
  return (valueOf) => {
    const given: Scalar[] = [];
    for (const arg of args) {
      const value = arg(valueOf);
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

function compileCall(rule: RulePart<'call'>, functions: Functions): RuleProgram {
  const args = rule.args.map((arg) => ruleProgram(arg, functions));
  if (rule.name === 'if') return compileIf(args);
  if (rule.name === 'pick') return compilePick(args);
  const sum = functions.get(rule.name) ?? generalSums.get(rule.name) ?? logic[rule.name];
  return compileSum(rule.name, sum ?? missingFunction, args);
}

function compileIf([when = nothing, then = nothing, otherwise = nothing]: readonly RuleProgram[]): RuleProgram {
  return (valueOf) => {
    const holds = when(valueOf);
    if (isProblem(holds)) return holds;
    return holds === true ? then(valueOf) : otherwise(valueOf);
  };
}

function compilePick([choice = nothing, ...pairs]: readonly RuleProgram[]): RuleProgram {
  return (valueOf) => {
    const chosen = choice(valueOf);
    if (isProblem(chosen)) return chosen;
    for (let at = 0; at < pairs.length; at += 2) {
      const [when = nothing, figure = nothing] = pairs.slice(at, at + 2);
      const fits = fitsChoice(chosen, when(valueOf));
      if (fits !== false) return fits === true ? figure(valueOf) : fits;
    }
    return { kind: 'refused', fn: 'pick', says: 'pick found none of its choices.' };
  };
}

function fitsChoice(chosen: Scalar, when: Value): boolean | FigureProblem {
  return isProblem(when) ? when : generalSums.get('same')?.([chosen, when]) === true;
}

/** Turns -0 into 0, like the graph engine. */
function finite(value: Scalar): Value {
  if (typeof value !== 'number') return value;
  return Number.isFinite(value) ? value + 0 : { kind: 'not-a-number' };
}
