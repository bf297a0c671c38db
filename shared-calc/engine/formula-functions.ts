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
import { causeText, REFUSED } from './cause-text.ts';
import { ruleFunctions } from './rule-functions.ts';

type Call = { readonly args: Parameters<FunctionPlugin['runFunction']>[0]; readonly procedureName: string };
type State = Parameters<FunctionPlugin['runFunction']>[1];
type Ran = Scalar | CellError;

/** The declaration of every function to the engine; it needs no more than the name. */
const anything = { argumentType: FunctionArgumentType.SCALAR };

const runs = new Map<string, (given: readonly Scalar[]) => Ran>();
const entries: Record<string, FunctionMetadata> = {};

/** Engine functions that stand for a cell without a value, one for each cause. */
const causes = { LW_MISSING: 'missing', LW_LOOP: 'loop', LW_FAULTY: 'faulty' } as const;

for (const [name, why] of Object.entries(causes)) {
  enter(name, () => new CellError(ErrorType.VALUE, causeText(why)));
}
enter('LW_NO_PICK', () => refusal('pick', 'pick found none of its choices.'));
for (const [name, sum] of [...generalSums, ...ruleFunctions]) {
  enter(`LW_${name.toUpperCase()}`, (given) => settle(name, sum(given)));
}

/**
 * The class that the engine requires: every function runs through one method, found by its name. Arguments are
 * evaluated here and not by the engine's own wrapper, which doubles the cost; checking has already settled their kinds.
 */
class RuleFunctions extends FunctionPlugin {
  static override implementedFunctions: ImplementedFunctions = entries;

  run(call: Call, state: State): Ran {
    const given: Scalar[] = [];
    for (const argument of call.args) {
      const value = this.evaluateAst(argument, state);
      if (value instanceof CellError) return value;
      if (!isScalar(value)) return new CellError(ErrorType.VALUE);
      given.push(value);
    }
    return runs.get(call.procedureName)?.(given) ?? new CellError(ErrorType.NAME);
  }
}

let registered = false;

/** Registers our functions with the engine, once per process. */
export function registerRuleFunctions(): void {
  if (registered) return;
  const words = Object.fromEntries(Object.keys(entries).map((name) => [name, name]));
  HyperFormula.registerFunctionPlugin(RuleFunctions, { enGB: words });
  registered = true;
}

function isScalar(value: unknown): value is Scalar {
  return typeof value === 'number' || typeof value === 'string' || typeof value === 'boolean';
}

function enter(name: string, run: (given: readonly Scalar[]) => Ran): void {
  runs.set(name, run);
  entries[name] = { method: 'run', parameters: [anything], repeatLastArgs: 1 };
}

function settle(name: string, answer: Scalar | { readonly refused: string }): Ran {
  if (typeof answer === 'object') return refusal(name, answer.refused);
  if (typeof answer === 'number' && !Number.isFinite(answer)) return new CellError(ErrorType.NUM);
  return answer;
}

function refusal(name: string, says: string): CellError {
  return new CellError(ErrorType.VALUE, `${REFUSED}${name}\n${says}`);
}
