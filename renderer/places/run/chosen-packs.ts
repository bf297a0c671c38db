import { carriageSum, supplierBills } from '#shared-calc/buy/carriage.ts';
import { onePackMore } from '#shared-calc/buy/one-pack-more.ts';
import type { Goods, PriceBook } from '#shared-calc/buy/price-book.ts';
import type { RunMaterial, ShoppingRun } from '#shared-calc/buy/shopping-run.ts';

/** Packs chosen by hand: of a material, how many of each pack. */
export type PackChoices = ReadonlyMap<string, ReadonlyMap<string, number>>;

/** A material with its packs as they are to be bought, against the best there is. */
export interface ChosenMaterial extends RunMaterial {
  /** The packs were chosen by hand. */
  readonly byHand: boolean;
  /** What the packs cost over the best; below nought while they do not cover the need. */
  readonly overBestCoins: number;
  /** What the packs lack of the need, in the material's unit. */
  readonly short: number;
}

export interface ChosenRun extends ShoppingRun {
  readonly materials: readonly ChosenMaterial[];
}

/** A shopping run with some packs chosen by hand: bills, carriage and sums follow them. */
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
  if (!counts || best.sale !== 'packs') return { ...best, byHand: false, overBestCoins: 0, short: 0 };
  const packs = packsOf(prices.goods.get(best.material), counts);
  const coins = packs.reduce((sum, { count, priceCoins }) => sum + count * priceCoins, 0);
  const over = packs.reduce((sum, { count, amount }) => sum + count * amount, 0) + best.onHand - best.used;
  return {
    ...best,
    packs,
    costCoins: coins,
    packsCoins: coins,
    leftOver: Math.max(0, withoutNoise(over)),
    byHand: true,
    overBestCoins: coins - best.packsCoins,
    short: Math.max(0, withoutNoise(-over)),
  };
}

function packsOf(goods: Goods | undefined, counts: ReadonlyMap<string, number>): RunMaterial['packs'] {
  return (goods?.packs ?? [])
    .map(({ id, amount, priceCoins }) => ({ id, amount, priceCoins, count: counts.get(id) ?? 0 }))
    .filter(({ count }) => count > 0)
    .toSorted((one, other) => other.amount - one.amount);
}

function withoutNoise(amount: number): number {
  return Math.abs(amount) < 1e-9 ? 0 : amount;
}

/** The counts that a material is bought in now, as the start of a choice by hand. */
export function countsOf({ packs }: Pick<RunMaterial, 'packs'>): ReadonlyMap<string, number> {
  return new Map(packs.map(({ id, count }) => [id, count]));
}

/** The choices with another count of one pack. */
export function withCount(
  choices: PackChoices,
  material: RunMaterial,
  { id, count }: { readonly id: string; readonly count: number },
): PackChoices {
  const counts = new Map(choices.get(material.material) ?? countsOf(material));
  counts.set(id, Math.max(0, count));
  return new Map(choices).set(material.material, counts);
}

/** The choices with a material back at its best. */
export function withBest(choices: PackChoices, material: string): PackChoices {
  const next = new Map(choices);
  next.delete(material);
  return next;
}
