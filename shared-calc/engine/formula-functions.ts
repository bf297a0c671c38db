import {
  CellError,
  ErrorType,
  FunctionArgumentType,
  FunctionPlugin,
  HyperFormula,
  type FunctionMetadata,
  type ImplementedFunctions,
} from 'hyperformula';
import { generalSums, type Scalar } from '#shared-calc/rule/general-sums.ts';
import { tradeFunctions } from '#shared-calc/trade/all-functions.ts';
import type { Answer, TradeFunction } from '#shared-calc/trade/trade-function.ts';
import { callInBase, type Given } from './call-function.ts';
import { causeText, REFUSED } from './cause-text.ts';

type Call = { readonly args: Parameters<FunctionPlugin['runFunction']>[0]; readonly procedureName: string };
type State = Parameters<FunctionPlugin['runFunction']>[1];
type Ran = number | boolean | CellError;

/** What the engine is told of every function; it asks for nothing more than the name. */
const anything = { argumentType: FunctionArgumentType.SCALAR };

const runs = new Map<string, (given: readonly Given[]) => Ran>();
const entries: Record<string, FunctionMetadata> = {};

/** A function of the engine that stands for a box without a value. */
const causes = { LW_MISSING: 'missing', LW_LOOP: 'loop', LW_FAULTY: 'faulty' } as const;

for (const [name, why] of Object.entries(causes)) {
  enter(name, () => new CellError(ErrorType.VALUE, causeText(why)));
}
enter('LW_NO_PICK', () => refusal('pick', 'pick found none of its choices.'));
for (const [name, sum] of generalSums) {
  enter(`LW_${name.toUpperCase()}`, (given) => settle(name, sum(given as Scalar[])));
}
for (const entry of tradeFunctions) if (entry.inRules) enterTrade(entry);

/**
 * The class that the engine asks for: every function runs through one method, found by its name. Arguments are
 * evaluated here and not by the engine's own wrapper, which costs as much again: checking has settled their kinds.
 */
class RuleFunctions extends FunctionPlugin {
  static override implementedFunctions: ImplementedFunctions = entries;

  run(call: Call, state: State): Ran {
    const given: Given[] = [];
    for (const argument of call.args) {
      const value = this.evaluateAst(argument, state);
      if (value instanceof CellError) return value;
      given.push(value as Given);
    }
    return runNamed(call.procedureName, given);
  }
}

let registered = false;

/** Hands our functions to the engine's registry, once a process. */
export function registerRuleFunctions(): void {
  if (registered) return;
  const words = Object.fromEntries(Object.keys(entries).map((name) => [name, name]));
  HyperFormula.registerFunctionPlugin(RuleFunctions, { enGB: words });
  registered = true;
}

function enterTrade(entry: TradeFunction): void {
  const call = callInBase(entry);
  enter(`LW_${entry.name.toUpperCase()}`, (given) => settle(entry.name, call(given)));
}

function enter(name: string, run: (given: readonly Given[]) => Ran): void {
  runs.set(name, run);
  entries[name] = { method: 'run', parameters: [anything], repeatLastArgs: 1 };
}

function runNamed(name: string, given: readonly Given[]): Ran {
  try {
    return runs.get(name)?.(given) ?? new CellError(ErrorType.NAME);
  } catch (fault) {
    return refusal(name, `The program failed in ${name}: ${String(fault)}`);
  }
}

function settle(name: string, answer: Answer | boolean): Ran {
  if (typeof answer === 'object') return refusal(name, answer.refused);
  if (typeof answer === 'number' && !Number.isFinite(answer)) return new CellError(ErrorType.NUM);
  return answer;
}

function refusal(name: string, says: string): CellError {
  return new CellError(ErrorType.VALUE, `${REFUSED}${name}\n${says}`);
}
