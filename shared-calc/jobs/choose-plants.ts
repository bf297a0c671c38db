import type { PriceBook } from '#shared-calc/buy/price-book.ts';
import type { Plant, Records } from '#shared-calc/records/records.ts';

/** A plant at its own price; without one it is not known yet. */
export interface PricedPlant extends Plant {
  readonly priceCoins?: number;
  readonly supplier?: string;
}

/** The plant book at the prices of a day. */
export function pricedPlants({ plant }: Pick<Records, 'plant'>, { goods }: PriceBook): readonly PricedPlant[] {
  return [...plant.values()].map((each) => {
    const { packs: [one] = [], supplier } = goods.get(each.id) ?? {};
    return { ...each, ...(one && { priceCoins: one.priceCoins }), ...(supplier !== undefined && { supplier }) };
  });
}

/** The conditions for plants in one tank. */
export interface PlantPlace {
  /** Daily light at the soil, mol/m2/d. */
  readonly light: number;
  /** Height from the dam to the top and length along the back, inside. */
  readonly heightMm: number;
  readonly lengthMm: number;
  readonly floorM2: number;
  /** A tank that dries out, for plants that want that. */
  readonly dry: boolean;
  /** Small children or a public room: nothing with sap, oxalates and the like. */
  readonly avoidHarm: boolean;
  /** A heavy or digging animal that crushes small and soft plants. */
  readonly animalCrushes: boolean;
}

export interface PlantNeed {
  readonly class: Plant['class'];
  readonly count: number;
}

export type RuledOut = 'harm' | 'too dark' | 'too dry' | 'too wet' | 'too tall' | 'floor too small' | 'crushed';

export interface ChosenPlants extends PlantNeed {
  readonly chosen: readonly { readonly plant: PricedPlant; readonly count: number; readonly shade: boolean }[];
  /** Species that may be sent instead, the best fit first. */
  readonly alternates: readonly PricedPlant[];
  readonly ruledOut: readonly { readonly plant: PricedPlant; readonly why: RuledOut }[];
  /** Plants needed that no species of the plant book fits. */
  readonly short: number;
}

/** A plant narrower than this at sale is crushed. Common practice, no source. */
const CRUSHED_UNDER_CM = 8;
/** From this many plants of a class on, two species share them. */
const SHARED_FROM = 4;

/**
 * Chooses species for each class of plant that a tank needs, to order by name: the suitable ones, cheapest first; a
 * species that finds the place too bright comes last, planted in shade. The other suitable species are alternates.
 */
export function choosePlants(
  plants: Iterable<PricedPlant>,
  needs: readonly PlantNeed[],
  place: PlantPlace,
): readonly ChosenPlants[] {
  const book = [...plants];
  return needs.filter((need) => need.count > 0).map((need) => chooseClass(book, need, place));
}

function chooseClass(book: readonly PricedPlant[], need: PlantNeed, place: PlantPlace): ChosenPlants {
  const fits: PricedPlant[] = [];
  const ruledOut: ChosenPlants['ruledOut'][number][] = [];
  for (const plant of book.filter((each) => each.class === need.class)) {
    const why = whyNot(plant, place);
    if (why === undefined) fits.push(plant);
    else ruledOut.push({ plant, why });
  }
  fits.sort((one, other) => inOrder(one, other, place));
  const suited = fits.filter((plant) => !isTooBright(plant, place));
  const species = (suited.length > 0 ? suited : fits).slice(0, need.count >= SHARED_FROM ? 2 : 1);
  const counts = species.map((_, at) => Math.floor((need.count + species.length - 1 - at) / species.length));
  return {
    ...need,
    chosen: species.map((plant, at) => ({ plant, count: counts[at] ?? 0, shade: isTooBright(plant, place) })),
    alternates: fits.filter((plant) => !species.includes(plant)),
    ruledOut,
    short: species.length === 0 ? need.count : 0,
  };
}

/** Light over a plant's range that does no harm, as a share; the light figures are not more exact. */
const BRIGHTER = 0.1;

type Rule = readonly [why: RuledOut, out: (plant: Plant, place: PlantPlace) => boolean];

const rules: readonly Rule[] = [
  ['harm', (plant, { avoidHarm }) => avoidHarm && plant.harm !== ''],
  ['too dry', (plant, { dry }) => dry && !plant.dry],
  ['too wet', (plant, { dry }) => !dry && plant.dry],
  ['too dark', (plant, { light }) => light < plant.lightLow - SLACK],
  ['floor too small', (plant, { floorM2 }) => floorM2 < plant.leastFloorM2 - SLACK],
  ['too tall', isTooTall],
  ['crushed', (plant, { animalCrushes }) => animalCrushes && plant.widthNowCm < CRUSHED_UNDER_CM],
];

const SLACK = 1e-9;

function whyNot(plant: Plant, place: PlantPlace): RuledOut | undefined {
  return rules.find(([, out]) => out(plant, place))?.[0];
}

/** After a year it may reach the top, not more; a climber runs along the back as well. */
function isTooTall(plant: Plant, { heightMm, lengthMm }: PlantPlace): boolean {
  const room = plant.class === 'climber' ? Math.max(heightMm, lengthMm) : heightMm;
  return plant.widthLaterCm * 10 > room + SLACK;
}

function isTooBright(plant: Plant, { light }: PlantPlace): boolean {
  return light > plant.lightHigh * (1 + BRIGHTER) + SLACK;
}

/** Fitting light before too bright, then the cheaper; those without a price last. */
function inOrder(one: PricedPlant, other: PricedPlant, place: PlantPlace): number {
  const bright = Number(isTooBright(one, place)) - Number(isTooBright(other, place));
  return bright || priceOf(one) - priceOf(other) || (one.id < other.id ? -1 : 1);
}

function priceOf({ priceCoins = Number.MAX_SAFE_INTEGER }: PricedPlant): number {
  return priceCoins;
}
