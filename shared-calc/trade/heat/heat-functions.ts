import type { TradeFunction } from '#shared-calc/trade/trade-function.ts';
import { airPressure } from './air-pressure.ts';
import { boilingPoint } from './boiling-point.ts';
import { comeUpTime } from './come-up-time.ts';
import { holdTime } from './hold-time.ts';
import { killRate } from './kill-rate.ts';
import { killTotalEntry } from './kill-total.ts';
import { leafBatches } from './leaf-batches.ts';
import { leafTreatTimeEntry } from './leaf-treat-time.ts';
import { steamHold } from './steam-hold.ts';
import { steamTemp } from './steam-temp.ts';
import { wetHeatUp } from './wet-heat-up.ts';

export const heatFunctions: readonly TradeFunction[] = [
  airPressure,
  steamTemp,
  boilingPoint,
  holdTime,
  comeUpTime,
  killRate,
  killTotalEntry,
  leafTreatTimeEntry,
  leafBatches,
  steamHold,
  wetHeatUp,
];
