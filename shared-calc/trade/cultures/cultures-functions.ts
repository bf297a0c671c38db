import type { TradeFunction } from '#shared-calc/trade/trade-function.ts';
import { bothSexesChance } from './both-sexes-chance.ts';
import { culturesToKeepEntry } from './cultures-to-keep.ts';
import { daysToCount } from './days-to-count.ts';
import { flyStarts } from './fly-starts.ts';
import { flyTubs } from './fly-tubs.ts';
import { foundersNeeded } from './founders-needed.ts';
import { growCount } from './grow-count.ts';
import { seedCount } from './seed-count.ts';

export const culturesFunctions: readonly TradeFunction[] = [
  growCount,
  seedCount,
  daysToCount,
  bothSexesChance,
  foundersNeeded,
  culturesToKeepEntry,
  flyStarts,
  flyTubs,
];
