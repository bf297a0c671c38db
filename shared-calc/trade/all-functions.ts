import { airAndLightFunctions } from './air-and-light/air-and-light-functions.ts';
import { buyingFunctions } from './buying/buying-functions.ts';
import { culturesFunctions } from './cultures/cultures-functions.ts';
import { datesFunctions } from './dates/dates-functions.ts';
import { geometryFunctions } from './geometry/geometry-functions.ts';
import { heatFunctions } from './heat/heat-functions.ts';
import { leavesFunctions } from './leaves/leaves-functions.ts';
import { massFunctions } from './mass/mass-functions.ts';
import { mediaFunctions } from './media/media-functions.ts';
import { priceFunctions } from './price/price-functions.ts';
import type { TradeFunction, TradeGroup } from './trade-function.ts';
import { waterFunctions } from './water/water-functions.ts';

/** The functions of each group, in the order of the Function book. */
export const functionsOfGroup: Readonly<Record<TradeGroup, readonly TradeFunction[]>> = {
  geometry: geometryFunctions,
  media: mediaFunctions,
  leaves: leavesFunctions,
  water: waterFunctions,
  heat: heatFunctions,
  cultures: culturesFunctions,
  'air and light': airAndLightFunctions,
  mass: massFunctions,
  buying: buyingFunctions,
  price: priceFunctions,
  dates: datesFunctions,
};

/** Every entry of the Function book, in its order; the engine, the rules and the page read this list. */
export const tradeFunctions: readonly TradeFunction[] = Object.values(functionsOfGroup).flat();

/** The function that a rule calls by this name. */
export function functionInRules(name: string): TradeFunction | undefined {
  return tradeFunctions.find((each) => each.inRules && each.name === name);
}
