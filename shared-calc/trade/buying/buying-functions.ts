import type { TradeFunction } from '#shared-calc/trade/trade-function.ts';
import { bagCount } from './bag-count.ts';
import { brickCount } from './brick-count.ts';
import { landedCostEntry } from './landed-cost.ts';
import { packMixEntry } from './pack-mix.ts';

export const buyingFunctions: readonly TradeFunction[] = [bagCount, brickCount, landedCostEntry, packMixEntry];
