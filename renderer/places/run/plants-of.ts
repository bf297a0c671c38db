import { plantNeedUses } from '#shared-calc/fields/plant.ts';
import type { PlantOrder } from '#shared-calc/jobs/order-plants.ts';
import type { Records } from '#shared-calc/records/records.ts';

/** The plants by name behind a material of the run: recipes ask for them through the need line of a class. */
export function plantsOf(
  material: string,
  plants: readonly PlantOrder[],
  { line }: Pick<Records, 'line'>,
): PlantOrder | undefined {
  const asks = new Set([...line.values()].filter((each) => each.material === material).map(({ use }) => use));
  return plants.find((order) => asks.has(plantNeedUses[order.class]));
}
