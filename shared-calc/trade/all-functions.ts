import { tradeFunctionsB } from './functions-of-heat-air-and-price.ts';
import { tradeFunctionsA } from './functions-of-tank-and-media.ts';
import { packMixEntry } from './pack-mix.ts';
import type { TradeFunction } from './trade-function.ts';

/** Every entry of the Function book, in its order: the one list that the engine, the rules and the page go by. */
export const tradeFunctions: readonly TradeFunction[] = [...tradeFunctionsA, ...tradeFunctionsB, packMixEntry];
