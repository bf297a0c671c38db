import type { Offer } from '#shared-calc/buy/offer.ts';
import type { RunMaterial, ShoppingRun } from '#shared-calc/buy/shopping-run.ts';
import { packList } from '#shared-calc/papers/needs-csv.ts';
import { textTable } from './text-table.ts';

type Money = (coins: number) => string;

/** What each supplier would sell of a material, with what the whole run then comes to; one offer where one alone sells it. */
export function offersJson(need: RunMaterial, run: ShoppingRun, money: Money): readonly Record<string, unknown>[] {
  return (need.offers ?? onlyOffer(need, run)).map((offer) => ({
    supplier: offer.supplier,
    name: offer.name,
    packs: offer.packs.map(({ amount, count, priceCoins }) => ({
      size: amount,
      unit: need.unit,
      count,
      each: money(priceCoins),
    })),
    coins: money(offer.coins),
    landed: money(offer.landedCoins),
    taken: offer.taken,
    secondBest: offer.secondBest,
  }));
}

function onlyOffer({ supplier, packs, packsCoins }: RunMaterial, run: ShoppingRun): readonly Offer[] {
  const bill = run.suppliers.find((each) => each.supplier === supplier);
  if (supplier === undefined || !bill) return [];
  const landedCoins = run.landedTogetherCoins;
  return [{ supplier, name: bill.name, packs, coins: packsCoins, landedCoins, taken: true, secondBest: false }];
}

/** The materials that several suppliers sell, the taken offer first and then the second best; empty without any. */
export function offersTable({ materials, proven }: ShoppingRun, money: Money): readonly string[] {
  const rows = materials.flatMap(({ material, unit, sale, offers = [] }) =>
    offers
      .filter(({ taken, secondBest }) => taken || secondBest)
      .toSorted((one, other) => Number(other.taken) - Number(one.taken))
      .map(({ name, packs, coins, landedCoins, taken }) => [
        taken ? material : '',
        taken ? 'taken' : 'second best',
        name,
        packList({ packs, unit, sale }),
        money(coins),
        money(landedCoins),
      ]),
  );
  if (rows.length === 0) return [];
  const notProven = proven ? [] : ['The best that was found in time; that nothing lands for less is not proven.'];
  return ['', textTable(['', '', 'supplier', 'packs', 'goods', 'run landed'], rows, [4, 5]), ...notProven];
}
