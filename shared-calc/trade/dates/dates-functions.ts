import type { TradeFunction } from '#shared-calc/trade/trade-function.ts';
import { orderByEntry } from './order-by.ts';
import { readyDateEntry } from './ready-date.ts';
import { serviceDatesEntry } from './service-dates.ts';
import { workdayShiftEntry } from './workday-shift.ts';

export const datesFunctions: readonly TradeFunction[] = [
  workdayShiftEntry,
  orderByEntry,
  readyDateEntry,
  serviceDatesEntry,
];
