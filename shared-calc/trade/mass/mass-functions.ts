import type { TradeFunction } from '#shared-calc/trade/trade-function.ts';
import { floorPressure } from './floor-pressure.ts';
import { glassMass } from './glass-mass.ts';
import { liftCrew } from './lift-crew.ts';

export const massFunctions: readonly TradeFunction[] = [glassMass, liftCrew, floorPressure];
