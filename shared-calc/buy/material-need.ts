import { failed, ok, type Result } from '#shared-calc/result.ts';
import { roundCoins } from '#shared-calc/trade/price/coin-rounding.ts';
import { packMix, type PackChoice, type PackCount, type PackFault } from '#shared-calc/trade/buying/pack-mix.ts';
import { shareCoins } from '#shared-calc/trade/price/share-coins.ts';
import type { BuyFault } from './buy-fault.ts';
import type { Offer } from './offer.ts';
import { unitPriceCoins, type Goods } from './price-book.ts';

/** How much of a material one line uses, for all builds of its column. */
export interface Use {
  readonly material: string;
  /** The quote group: a margin's id. */
  readonly group: string;
  /** In the material's unit. */
  readonly amount: number;
  /** That of its line, for a material that is no longer in the books. */
  readonly unit?: string;
}

export interface GroupShare {
  readonly group: string;
  readonly costCoins: number;
  readonly packsCoins: number;
}

export interface MaterialNeed {
  readonly material: string;
  readonly label: string;
  /** The quote group of the first line that needs it. */
  readonly group: string;
  readonly sale: Goods['sale'];
  readonly keeps: boolean;
  readonly supplier?: string;
  readonly used: number;
  readonly unit: string;
  readonly onHand: number;
  /** Whole packs to buy, largest first; none for cut and own goods. */
  readonly packs: readonly PackCount[];
  /** Used cost: each use at the unit price of the smallest pack on sale, each rounded once. */
  readonly costCoins: number;
  /** Packs cost: the price of the packs; for cut and own goods the used cost. */
  readonly packsCoins: number;
  /** In the Store after the job. */
  readonly leftOver: number;
  /** Both costs by quote group; they add up to the totals. */
  readonly byGroup: readonly GroupShare[];
  /** At least one of its prices is old. */
  readonly oldPrice: boolean;
  /** At least one of its prices is a guess; left out if none. */
  readonly guess?: true;
  /** Why no price is known: its packs and costs are not known then, and count as nothing. */
  readonly lacks?: BuyFault;
  /** What each supplier would sell of it, where the run had a choice. */
  readonly offers?: readonly Offer[];
}

/** What there is for a need, in the material's unit. */
export interface Supply {
  readonly stock: number;
  /** Ordered already. */
  readonly coming?: number;
  /** Of goods cut to size, what of the stock was cut for it: nothing else fits. */
  readonly cut?: number;
  /** In the Store as well, and not for this need. */
  readonly beside?: number;
}

/** A material's need from its uses. Cut goods are cut for the job and take nothing from the Store but what came for it. */
export function materialNeed(goods: Goods, uses: readonly Use[], supply: Supply): MaterialNeed {
  const used = uses.reduce((sum, use) => sum + use.amount, 0);
  const coins = uses.map((use) => roundCoins(use.amount * unitPriceCoins(goods)));
  const costCoins = coins.reduce((sum, each) => sum + each, 0);
  const { stock, beside = 0 } = supply;
  const onHand = goods.sale === 'cut' ? 0 : stock + beside;
  const given = givenOf(goods, supply);
  const found = choose(goods, { used, given, costCoins });
  const chosen = found.ok ? found.value : { packs: [], costCoins: 0, leftOver: Math.max(0, given - used) };
  const counted = goods.packs.filter(({ id }, at) => at === 0 || chosen.packs.some((pack) => pack.id === id));
  const { material, label, unit, sale, keeps, supplier } = goods;
  return {
    material,
    label,
    group: uses[0]?.group ?? '',
    sale,
    keeps,
    ...(supplier !== undefined && { supplier }),
    used,
    unit,
    onHand,
    packs: chosen.packs,
    costCoins,
    packsCoins: chosen.costCoins,
    leftOver: goods.sale === 'cut' ? 0 : chosen.leftOver + beside,
    byGroup: sharesOf(uses, coins, chosen.costCoins),
    oldPrice: counted.some(({ old }) => old),
    ...(counted.some(({ guess }) => guess) && { guess: true }),
    ...(!found.ok && { lacks: found.fault }),
  };
}

function givenOf({ sale }: Goods, { stock, coming = 0, cut = 0 }: Supply): number {
  return (sale === 'cut' ? cut : stock) + coming;
}

interface NeedRequest {
  readonly used: number;
  readonly given: number;
  readonly costCoins: number;
}

function choose(goods: Goods, { used, given, costCoins }: NeedRequest): Result<PackChoice, BuyFault> {
  if (goods.packs.length === 0) return failed(goods.fault ?? buyFault(goods, { kind: 'no-packs' }));
  if (goods.sale === 'own') return ok({ packs: [], costCoins, leftOver: Math.max(0, given - used) });
  if (goods.sale === 'cut')
    return ok({ packs: [], costCoins: cutCoins(goods, { used, given, costCoins }), leftOver: 0 });
  const mix = packMix({ need: used, onHand: given, packs: goods.packs, keeps: goods.keeps });
  return mix.ok ? mix : { ok: false, fault: buyFault(goods, mix.fault) };
}

/** Pieces that are cut for the job already are not cut again. */
function cutCoins(goods: Goods, { used, given, costCoins }: NeedRequest): number {
  return given > 0 ? roundCoins(Math.max(0, used - given) * unitPriceCoins(goods)) : costCoins;
}

function buyFault({ material, label, unit, packs }: Goods, fault: PackFault): BuyFault {
  if (fault.kind === 'no-packs') return { kind: 'no-packs', material, label };
  const amount = packs.find((pack) => pack.id === fault.pack)?.amount ?? 0;
  return { kind: 'no-amount', material, label, unit, amount };
}

function sharesOf(uses: readonly Use[], coins: readonly number[], packsCoins: number): readonly GroupShare[] {
  const [only, ...others] = uses;
  if (!only) return [];
  if (others.length === 0) return [{ group: only.group, costCoins: coins[0] ?? 0, packsCoins }];
  const groups = new Map<string, number>();
  for (const [at, use] of uses.entries()) groups.set(use.group, (groups.get(use.group) ?? 0) + (coins[at] ?? 0));
  const packs = shareCoins(packsCoins, [...groups.values()]);
  return [...groups].map(([group, costCoins], at) => ({ group, costCoins, packsCoins: packs[at] ?? 0 }));
}
