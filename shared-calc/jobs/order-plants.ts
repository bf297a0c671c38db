import type { Bench } from '#shared-calc/bench/open-bench.ts';
import type { Plant } from '#shared-calc/records/records.ts';
import { choosePlants, type ChosenPlants, type PricedPlant } from './choose-plants.ts';
import { plantNeeds, plantPlace, type Asked } from './plant-place.ts';

/** Plants of one class to order by name, for all builds. */
export interface PlantOrder {
  readonly class: Plant['class'];
  readonly species: readonly { readonly plant: PricedPlant; readonly count: number; readonly shade: boolean }[];
  /** Species that may be sent instead in every size that needs the class. */
  readonly alternates: readonly PricedPlant[];
  /** Plants needed that no species of the plant book fits. */
  readonly short: number;
}

/** Plants of one species on an order. */
export interface PlantLine {
  readonly plant: PricedPlant;
  readonly count: number;
  readonly shade: boolean;
  /** At its own price; at the price of its class where it has none. */
  readonly coins: number;
  /** At the price of its class, as a quote counts it. */
  readonly classCoins: number;
}

/** What is bought of the species of a class, in their order; what is there already is taken off the last. */
export function plantLines(
  { species }: Pick<PlantOrder, 'species'>,
  { count: toBuy, classEachCoins }: { readonly count: number; readonly classEachCoins: number },
): readonly PlantLine[] {
  let left = toBuy;
  return species.flatMap(({ plant, count: wanted, shade }) => {
    const count = Math.min(wanted, left);
    left -= count;
    const coins = count * (plant.priceCoins ?? classEachCoins);
    return count > 0 ? [{ plant, count, shade, coins, classCoins: count * classEachCoins }] : [];
  });
}

/** The sizes of one job or order, and what was asked at their place. */
export interface PlantedBench extends Asked {
  readonly bench: Bench;
}

/** The species of all sizes together, by class, in the order of the plant book's classes. */
export function orderPlants(benches: readonly PlantedBench[], plants: Iterable<PricedPlant>): readonly PlantOrder[] {
  const book = [...plants];
  const chosen = benches.flatMap((planted) =>
    planted.bench.input().columns.flatMap(({ key, count }) => {
      const place = plantPlace(planted.bench, key, planted);
      const needs = plantNeeds(planted.bench, key);
      return choosePlants(book, needs, place).map((each) => ({ ...each, builds: count }));
    }),
  );
  return [...Map.groupBy(chosen, (each) => each.class)].map(([of, each]) => ({
    class: of,
    species: speciesOf(each),
    alternates: inEvery(each),
    short: each.reduce((sum, { short, builds }) => sum + short * builds, 0),
  }));
}

type ForBuilds = ChosenPlants & { readonly builds: number };

function speciesOf(chosen: readonly ForBuilds[]): PlantOrder['species'] {
  const species = new Map<string, PlantOrder['species'][number]>();
  for (const { chosen: some, builds } of chosen) {
    for (const { plant, count, shade } of some) {
      const before = species.get(plant.id);
      const sum = (before?.count ?? 0) + count * builds;
      species.set(plant.id, { plant, count: sum, shade: shade || before?.shade === true });
    }
  }
  return [...species.values()];
}

/** Species that suit every size that needs the class, and are not ordered already. */
function inEvery(chosen: readonly ForBuilds[]): readonly PricedPlant[] {
  const [first, ...others] = chosen;
  const fits = (each: ForBuilds, plant: PricedPlant) =>
    [...each.alternates, ...each.chosen.map((one) => one.plant)].includes(plant);
  const ordered = chosen.flatMap((each) => each.chosen.map(({ plant }) => plant));
  return (first?.alternates ?? []).filter(
    (plant) => !ordered.includes(plant) && others.every((each) => fits(each, plant)),
  );
}
