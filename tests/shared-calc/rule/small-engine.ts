import {
  CellError,
  ErrorType,
  FunctionArgumentType,
  FunctionPlugin,
  HyperFormula,
  type ImplementedFunctions,
} from 'hyperformula';
import { generalSums, type GeneralSum, type Scalar } from '#shared-calc/rule/general-sums.ts';

type Call = { readonly args: Parameters<FunctionPlugin['runFunction']>[0]; readonly procedureName: string };
type State = Parameters<FunctionPlugin['runFunction']>[1];

const sums = new Map<string, GeneralSum>([...generalSums].map(([name, sum]) => [`LW_${name.toUpperCase()}`, sum]));
sums.set('LW_NO_PICK', () => ({ refused: 'pick found none of its choices.' }));
sums.set('LW_MISSING', () => ({ refused: 'missing' }));

const anything = { argumentType: FunctionArgumentType.SCALAR };

/** The general sums as functions of the engine, without any others. */
class GeneralFunctions extends FunctionPlugin {
  static override implementedFunctions: ImplementedFunctions = Object.fromEntries(
    [...sums.keys()].map((name) => {
      const alone = name === 'LW_NO_PICK' || name === 'LW_MISSING';
      return [
        name,
        alone ? { method: 'run', parameters: [] } : { method: 'run', parameters: [anything], repeatLastArgs: 1 },
      ];
    }),
  );

  run(call: Call, state: State): ReturnType<FunctionPlugin['runFunction']> {
    const name = call.procedureName;
    return this.runFunction(call.args, state, this.metadata(name), (...given: (Scalar | CellError)[]) => {
      const error = given.find((each) => each instanceof CellError);
      if (error) return error;
      const answer = sums.get(name)?.(given as Scalar[]) ?? { refused: 'no such function' };
      return typeof answer === 'object' ? new CellError(ErrorType.VALUE, answer.refused) : answer;
    });
  }
}

/** An engine that knows the general sums, with one row of cells. */
export function smallEngine(boxes: readonly (Scalar | undefined)[]): HyperFormula {
  const others = new Set([...sums.keys()].flatMap((name) => HyperFormula.getFunctionPlugin(name) ?? []));
  HyperFormula.registerFunctionPlugin(GeneralFunctions, {
    enGB: Object.fromEntries([...sums.keys()].map((name) => [name, name])),
  });
  const row = boxes.map((box) => {
    if (box === undefined) return '=LW_MISSING()';
    return typeof box === 'string' ? `="${box}"` : box;
  });
  const engine = HyperFormula.buildFromArray([row], {
    licenseKey: 'gpl-v3',
    smartRounding: false,
    caseSensitive: true,
    accentSensitive: true,
  });
  // The engine registers functions per process: the program's own are restored for the next test.
  HyperFormula.unregisterFunctionPlugin(GeneralFunctions);
  for (const plugin of others) HyperFormula.registerFunctionPlugin(plugin);
  return engine;
}
