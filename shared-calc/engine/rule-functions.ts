import type { Sum } from '#shared-calc/rule/evaluate-rule.ts';
import { tradeFunctions } from '#shared-calc/trade/all-functions.ts';
import { callInBase, type CallInBase } from './call-function.ts';

/**
 * The trade functions that rules may call, by name, over coherent base units. A function that throws counts as a
 * refusal.
 */
export const ruleFunctions: ReadonlyMap<string, Sum> = new Map(
  tradeFunctions.filter((each) => each.inRules).map((each) => [each.name, guarded(each.name, callInBase(each))]),
);

function guarded(name: string, call: CallInBase): Sum {
  return (given) => {
    try {
      return call(given);
    } catch (fault) {
      return { refused: `The program failed in ${name}: ${String(fault)}` };
    }
  };
}
