import { packsOf, priceOn, pricesOf, sellerOf, usualSupplier } from '#shared-calc/buy/pack-prices.ts';
import type { MaterialNeed } from '#shared-calc/buy/material-need.ts';
import { goodsLabel, unitOfGoods } from '#shared-calc/buy/unit-of-goods.ts';
import { isBefore } from '#shared-calc/jobs/move-job.ts';
import type { Pack, PackPrice } from '#shared-calc/records/records.ts';
import { roundCoins } from '#shared-calc/trade/price/coin-rounding.ts';
import type { Derived } from './derived.ts';

/** What some jobs, or sizes, use of a material. */
interface PriceUse {
  readonly material: string;
  /** Of all of them, in the material's unit; 0 where nothing asks for it yet. */
  readonly used: number;
  readonly jobs: readonly string[];
}

/** A price to be given, with what is known of it. */
export interface OpenPrice extends PriceUse {
  readonly label: string;
  readonly unit: string;
  /** Left out: it has no pack yet. */
  readonly pack?: Pack;
  /** A guess, a price of a later day, or one that was given meanwhile. */
  readonly price?: PackPrice;
  readonly supplier?: string;
  /** What the use comes to by that price. */
  readonly stakeCoins?: number;
}

/** Needs of a job, or of sizes without one, in which a price is missing or a guess. */
export interface AskedNeeds {
  readonly job?: string;
  readonly needs: readonly MaterialNeed[];
}

/** The prices that some needs wait for, then those they guess; by the money at stake, then by the jobs that wait. */
export function openPrices(derived: Derived, asked: readonly AskedNeeds[]): readonly OpenPrice[] {
  const uses = new Map<string, PriceUse>();
  for (const { job, needs } of asked) {
    for (const { material, used, lacks, guess } of needs) {
      if (!lacks && !guess) continue;
      const before = uses.get(material) ?? { material, used: 0, jobs: [] };
      uses.set(material, {
        material,
        used: before.used + used,
        jobs: job === undefined ? before.jobs : [...before.jobs, job],
      });
    }
  }
  return [...uses.values()].map((use) => openPrice(derived, use)).toSorted(byStake);
}

/** The same over jobs; a job that cannot be worked at all asks for none. */
export function openPricesOf(derived: Derived, jobs: readonly string[]): readonly OpenPrice[] {
  return openPrices(
    derived,
    jobs.flatMap((job) => {
      const known = derived.job(job)?.known();
      return known?.ok ? [{ job, needs: known.value.needs.needs }] : [];
    }),
  );
}

/** The same over every job that is still to be built, and all that a recipe or a tank asks for besides. */
export function allOpenPrices(derived: Derived): readonly OpenPrice[] {
  const { records, prices } = derived;
  const jobs = [...records.job.values()].filter(({ state }) => isBefore(state, 'built')).map(({ id }) => id);
  const waiting = openPricesOf(derived, jobs);
  const listed = new Set(waiting.map(({ material }) => material));
  const inRecipes = new Set([...records.line.values()].map(({ material }) => material));
  const others = [...prices.goods.values()]
    .filter(({ fault, packs }) => fault !== undefined || packs.some(({ guess }) => guess))
    .filter(({ material }) => !listed.has(material) && (inRecipes.has(material) || records.tank.has(material)));
  return [...waiting, ...others.map(({ material }) => openPrice(derived, { material, used: 0, jobs: [] }))];
}

/** What is known of the price of a material. */
export function openPrice({ records, today }: Derived, use: PriceUse): OpenPrice {
  const { material, used } = use;
  const { pack, price } = pricedPack(records, material, today);
  const supplier = pack ? sellerOf(records, pack) : usualSupplier(records, material);
  const stakeCoins = pack && price && stakeOf(used, pack, price);
  return {
    ...use,
    label: goodsLabel(material, records),
    unit: unitOfGoods(material, records) ?? 'each',
    ...(pack && { pack }),
    ...(price && { price }),
    ...(supplier !== undefined && { supplier }),
    ...(stakeCoins !== undefined && { stakeCoins }),
  };
}

/** The smallest pack that has a price, else the smallest; a price of a later day is a hint. */
function pricedPack(records: Derived['records'], material: string, today: string): Pick<OpenPrice, 'pack' | 'price'> {
  const packs = packsOf(records, material);
  for (const pack of packs) {
    const price = priceOn(records, pack.id, today) ?? pricesOf(records, pack.id).at(-1);
    if (price) return { pack, price };
  }
  const [pack] = packs;
  return pack ? { pack } : {};
}

function stakeOf(used: number, { amount }: Pack, { priceCoins }: PackPrice): number | undefined {
  return used > 0 && amount > 0 ? roundCoins((used * priceCoins) / amount) : undefined;
}

function byStake(one: OpenPrice, other: OpenPrice): number {
  const guessed = ({ price }: OpenPrice) => Number(price?.guess ?? false);
  return (
    guessed(one) - guessed(other) ||
    (other.stakeCoins ?? -1) - (one.stakeCoins ?? -1) ||
    other.jobs.length - one.jobs.length
  );
}
