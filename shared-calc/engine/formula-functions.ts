import {
  CellError,
  ErrorType,
  FunctionArgumentType,
  FunctionPlugin,
  HyperFormula,
  type FunctionMetadata,
  type ImplementedFunctions,
} from 'hyperformula';
import { generalSums } from '#shared-calc/rule/general-sums.ts';
import { tradeFunctions } from '#shared-calc/trade/all-functions.ts';
import type { Answer, TradeFunction } from '#shared-calc/trade/trade-function.ts';
import { callInBase, type Given } from './call-function.ts';
import { causeText, REFUSED } from './cause-text.ts';

type Call = { readonly args: Parameters<FunctionPlugin['runFunction']>[0]; readonly procedureName: string };
type State = Parameters<FunctionPlugin['runFunction']>[1];
type Metadata = FunctionMetadata;
type Ran = number | boolean | CellError;

/** Errors among the arguments are told apart here, so every argument may be anything. */
const anything = { argumentType: FunctionArgumentType.SCALAR };

const runs = new Map<string, (given: readonly Given[]) => Ran>();
const entries: Record<string, Metadata> = {};

/** A function of the engine that stands for a box without a value. */
const causes = { LW_MISSING: 'missing', LW_LOOP: 'loop', LW_FAULTY: 'faulty' } as const;

for (const [name, why] of Object.entries(causes)) {
  enter(name, () => new CellError(ErrorType.VALUE, causeText(why)), []);
}
enter('LW_NO_PICK', () => refusal('pick', 'pick found none of its choices.'), []);
for (const [name, sum] of generalSums) {
  enter(`LW_${name.toUpperCase()}`, (given) => settle(name, sum(given.map((each) => each ?? 0))), [anything], 1);
}
for (const entry of tradeFunctions) if (entry.inRules) enterTrade(entry);

/** The class that the engine asks for: every function runs through one method, found by its name. */
class RuleFunctions extends FunctionPlugin {
  static override implementedFunctions: ImplementedFunctions = entries;

  run(call: Call, state: State): ReturnType<FunctionPlugin['runFunction']> {
    const name = call.procedureName;
    return this.runFunction(call.args, state, this.metadata(name), (...given: unknown[]) => runNamed(name, given));
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
  const parameters = entry.args.map((argument) =>
    argument.otherwise === undefined ? anything : { ...anything, optionalArg: true },
  );
  enter(`LW_${entry.name.toUpperCase()}`, (given) => settle(entry.name, call(given)), parameters);
}

function enter(
  name: string,
  run: (given: readonly Given[]) => Ran,
  parameters: Metadata['parameters'] & object,
  repeatLastArgs = 0,
): void {
  runs.set(name, run);
  entries[name] = { method: 'run', parameters, ...(repeatLastArgs > 0 && { repeatLastArgs }) };
}

/** Runs a function over what the engine hands it; the first error among the arguments travels on unchanged. */
function runNamed(name: string, given: readonly unknown[]): Ran {
  const error = given.find((each) => each instanceof CellError);
  if (error instanceof CellError) return error;
  try {
    return runs.get(name)?.(given as Given[]) ?? new CellError(ErrorType.NAME);
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
