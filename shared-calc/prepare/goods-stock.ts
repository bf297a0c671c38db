import { stock, type GoodsStock, type LedgerDays, type LedgerRecords } from '#shared-calc/buy/ledger.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { isFlies } from './culture-demands.ts';
import { portionMaterial, portionOf } from './portion-of.ts';
import { standingOn, tubsOf } from './standing-tub.ts';

type StockRecords = LedgerRecords & Pick<Records, 'tub' | 'cultureKind' | 'pack' | 'packPrice'>;

/**
 * What there is of goods, with the animals of standing tubs where they are a portion of seed: on hand is what stands in
 * them, to give what may be taken on the day of use.
 */
export function goodsStock(records: StockRecords, goods: string, days: LedgerDays): GoodsStock {
  const now = stock(records, goods, days);
  const kinds = [...records.cultureKind.values()].filter((kind) => !isFlies(kind) && portionMaterial(kind) === goods);
  return kinds.reduce((sum, kind) => {
    const { animals: portion } = portionOf(records, kind, days.asked);
    return tubsOf(records, kind.id, days.asked).reduce((all, tub) => {
      const standing = (standingOn(tub, kind, { on: days.asked }).animals ?? 0) / portion;
      const may = (standingOn(tub, kind, { on: days.use ?? days.asked }).mayTake ?? 0) / portion;
      return withTub(all, { standing, may, keptFor: tub.keptFor });
    }, sum);
  }, now);
}

interface TubPortions {
  readonly standing: number;
  readonly may: number;
  readonly keptFor: string | undefined;
}

function withTub(now: GoodsStock, { standing, may, keptFor }: TubPortions): GoodsStock {
  const onHand = now.onHand + standing;
  if (keptFor === undefined) return { ...now, onHand, free: now.free + may };
  return { ...now, onHand, kept: new Map(now.kept).set(keptFor, (now.kept.get(keptFor) ?? 0) + may) };
}
