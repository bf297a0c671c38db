import { tradeFunctionsB } from './functions-of-heat-air-and-price.ts';
import { tradeFunctionsA } from './functions-of-tank-and-media.ts';
import { packMixEntry } from './pack-mix.ts';
import type { TradeFunction } from './trade-function.ts';

/** Every entry of the Function book, in its order: the one list that the engine, the rules and the page go by. */
export const tradeFunctions: readonly TradeFunction[] = [...tradeFunctionsA, ...tradeFunctionsB, packMixEntry];

/** The function that a rule calls by this name. */
export function functionInRules(name: string): TradeFunction | undefined {
  return tradeFunctions.find((each) => each.inRules && each.name === name);
}
