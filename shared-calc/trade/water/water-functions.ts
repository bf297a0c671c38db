import type { TradeFunction } from '#shared-calc/trade/trade-function.ts';
import { drainCapacity } from './drain-capacity.ts';
import { drainFillDays } from './drain-fill-days.ts';
import { mistDaily } from './mist-daily.ts';
import { reservoirDays } from './reservoir-days.ts';
import { wettingWater } from './wetting-water.ts';

export const waterFunctions: readonly TradeFunction[] = [
  wettingWater,
  drainCapacity,
  mistDaily,
  drainFillDays,
  reservoirDays,
];
