import { plantClasses, plantNeedUses } from '#shared-calc/fields/plant.ts';
import type { Order, Plant, Records } from '#shared-calc/records/records.ts';
import { roundCoins } from '#shared-calc/trade/price/coin-rounding.ts';
import { packsOf, priceOn } from './pack-prices.ts';
import { allLines } from '#shared-calc/recipe/lines-of.ts';
import type { RecipeTables } from '#shared-calc/recipe/whole-recipe.ts';

/** The classes of plants that a material stands for: recipes ask for it through the need line of the class. */
export function classesOf(records: RecipeTables, material: string): ReadonlySet<Plant['class']> {
  const uses = new Set(
    allLines(records)
      .filter((each) => each.material === material)
      .map(({ use }) => use),
  );
  return new Set(plantClasses.filter((of) => uses.has(plantNeedUses[of])));
}

type ClassRecords = RecipeTables & Pick<Records, 'plant' | 'pack' | 'packPrice'>;

/** What the plants by name of an order come to at the price of their class, at which they are quoted; nothing without one. */
export function classPriceOf(records: ClassRecords, { lines, on }: Pick<Order, 'lines' | 'on'>): number | undefined {
  let coins: number | undefined;
  for (const { of, count, amount } of lines) {
    const each = classUnitCoins(records, of, on);
    if (each !== undefined) coins = (coins ?? 0) + roundCoins(count * amount * each);
  }
  return coins;
}

/** What those plants come to at their own prices. */
export function ownPriceOf(records: ClassRecords, { lines, on }: Pick<Order, 'lines' | 'on'>): number {
  return lines
    .filter(({ of }) => classUnitCoins(records, of, on) !== undefined)
    .reduce((sum, { count, askedCoins }) => sum + count * askedCoins, 0);
}

function classUnitCoins(records: ClassRecords, plant: string, on: string): number | undefined {
  const material = classMaterialOf(records, plant);
  const [smallest] = material === undefined ? [] : packsOf(records, material);
  const price = smallest && priceOn(records, smallest.id, on);
  return smallest && price && price.priceCoins / smallest.amount;
}

/** The material that stands for a plant by name on a quote; none for other goods. */
export function classMaterialOf(records: RecipeTables & Pick<Records, 'plant'>, plant: string): string | undefined {
  const of = records.plant.get(plant)?.class;
  return of && allLines(records).find(({ use }) => use === plantNeedUses[of])?.material;
}
