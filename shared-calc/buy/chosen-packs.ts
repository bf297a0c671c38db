import { carriageSum, supplierBills } from './carriage.ts';
import { onePackMore } from './one-pack-more.ts';
import { soldBy, type Goods, type PriceBook } from './price-book.ts';
import type { RunMaterial, ShoppingRun } from './shopping-run.ts';

/** Packs chosen by hand: for each material, the count of each pack. */
export type PackChoices = ReadonlyMap<string, ReadonlyMap<string, number>>;

/** A material with the packs to buy, compared with the best packs. */
export interface ChosenMaterial extends RunMaterial {
  readonly byHand: boolean;
  /** What the packs cost over the best ones; below zero while they do not cover the need. */
  readonly overBestCoins: number;
  /** The part of the need that the packs do not cover, in the material's unit. */
  readonly short: number;
}

export interface ChosenRun extends ShoppingRun {
  readonly materials: readonly ChosenMaterial[];
}

/**
 * A shopping run with some packs chosen by hand; bills, carriage and sums use them. Counts of packs no longer on sale
 * are ignored, and so is a choice for a material that the Store now has.
 */
export function chosenRun(run: ShoppingRun, choices: PackChoices, prices: PriceBook): ChosenRun {
  const materials = run.materials.map((best) => chosenMaterial(best, choices.get(best.material), prices));
  const suppliers = supplierBills(materials, prices).map((bill) => {
    const better = onePackMore(bill, materials, prices);
    return { ...bill, ...(better && { better }) };
  });
  const togetherCoins = materials.reduce((sum, { packsCoins }) => sum + packsCoins, 0);
  return { ...run, materials, suppliers, togetherCoins, landedTogetherCoins: togetherCoins + carriageSum(suppliers) };
}

function chosenMaterial(
  best: RunMaterial,
  counts: ReadonlyMap<string, number> | undefined,
  prices: PriceBook,
): ChosenMaterial {
  if (!counts || best.sale !== 'packs' || best.toBuy <= 1e-9)
    return { ...best, byHand: false, overBestCoins: 0, short: 0 };
  const packs = packsOf(soldBy(prices, best), counts);
  const coins = packs.reduce((sum, { count, priceCoins }) => sum + count * priceCoins, 0);
  const bought = contentOf(packs);
  const short = withoutNoise(best.toBuy - bought);
  return {
    ...best,
    packs,
    costCoins: coins,
    packsCoins: coins,
    leftOver: Math.max(0, withoutNoise(best.leftOver + bought - contentOf(best.packs))),
    byHand: true,
    overBestCoins: coins - best.packsCoins,
    short: Math.max(0, short),
  };
}

function packsOf(goods: Goods | undefined, counts: ReadonlyMap<string, number>): RunMaterial['packs'] {
  return (goods?.packs ?? [])
    .map(({ id, amount, priceCoins }) => ({ id, amount, priceCoins, count: counts.get(id) ?? 0 }))
    .filter(({ count }) => count > 0)
    .toSorted((one, other) => other.amount - one.amount);
}

function contentOf(packs: RunMaterial['packs']): number {
  return packs.reduce((sum, { count, amount }) => sum + count * amount, 0);
}

function withoutNoise(amount: number): number {
  return Math.abs(amount) < 1e-9 ? 0 : amount;
}

/** The counts of a material with one pack's count changed; a new choice starts from the packs that are bought now. */
export function withCount(
  { packs }: Pick<RunMaterial, 'packs'>,
  { id, count }: { readonly id: string; readonly count: number },
): ReadonlyMap<string, number> {
  return new Map(packs.map((pack) => [pack.id, pack.count])).set(id, Math.max(0, count));
}
