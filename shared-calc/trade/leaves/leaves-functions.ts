import type { TradeFunction } from '#shared-calc/trade/trade-function.ts';
import { leafCountPer100g } from './leaf-count-per-100g.ts';
import { leafCover } from './leaf-cover.ts';
import { leafLayersForCover } from './leaf-layers-for-cover.ts';
import { leafMassForCover } from './leaf-mass-for-cover.ts';
import { leavesForCover } from './leaves-for-cover.ts';
import { litterLife } from './litter-life.ts';
import { litterMass } from './litter-mass.ts';

export const leavesFunctions: readonly TradeFunction[] = [
  leafCover,
  leafLayersForCover,
  leavesForCover,
  leafMassForCover,
  litterMass,
  leafCountPer100g,
  litterLife,
];
