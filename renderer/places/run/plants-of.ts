import { plantNeedUses } from '#shared-calc/fields/plant.ts';
import type { PlantOrder } from '#shared-calc/jobs/order-plants.ts';
import { allLines } from '#shared-calc/recipe/lines-of.ts';
import type { RecipeTables } from '#shared-calc/recipe/whole-recipe.ts';

/** The plants by name behind a material of the run: recipes ask for them through the need line of a class. */
export function plantsOf(
  material: string,
  plants: readonly PlantOrder[],
  records: RecipeTables,
): PlantOrder | undefined {
  const asks = new Set(
    allLines(records)
      .filter((each) => each.material === material)
      .map(({ use }) => use),
  );
  return plants.find((order) => asks.has(plantNeedUses[order.class]));
}
