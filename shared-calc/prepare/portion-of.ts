import { packsOf, priceOn } from '#shared-calc/buy/pack-prices.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import type { CultureKind, Records } from '#shared-calc/records/records.ts';
import { seedUseOf } from './culture-demands.ts';
import type { Portion } from './late-cultures.ts';

/** The material of a portion and its animals: a cup of springtails, ten isopods. */
const portions = {
  springtailSeed: { material: 'SP', animals: 2000 },
  isopodFounders: { material: 'IS', animals: 10 },
} as const;

/** The material that a portion of a kind is in needs and prices. */
export function portionMaterial(kind: CultureKind): string {
  return portions[seedUseOf(kind)].material;
}

/** What one portion of a kind holds, and its price on a day. */
export function portionOf(records: Pick<Records, 'pack' | 'packPrice'>, kind: CultureKind, on: Day): Portion {
  const { material, animals } = portions[seedUseOf(kind)];
  const one = packsOf(records, material).find(({ amount }) => amount === 1);
  const price = one && priceOn(records, one.id, on);
  return { animals, ...(price && { coins: price.priceCoins }) };
}
