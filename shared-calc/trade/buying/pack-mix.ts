import { failed, ok, type Result } from '#shared-calc/result.ts';
import { countUp } from '#shared-calc/trade/count-up.ts';
import { listFunction } from '#shared-calc/trade/trade-function.ts';

export interface PackOffer {
  readonly id: string;
  /** Content of one pack, in the unit of the need. */
  readonly amount: number;
  /** Whole coins; left out if no price is known. */
  readonly priceCoins?: number | undefined;
}

export interface PackQuestion {
  readonly need: number;
  readonly onHand: number;
  readonly packs: readonly PackOffer[];
  /** The left-over can be stored for the next job. */
  readonly keeps: boolean;
}

export interface PackCount {
  readonly id: string;
  readonly amount: number;
  readonly count: number;
  readonly priceCoins: number;
}

export interface PackChoice {
  /** The packs to buy, largest first. */
  readonly packs: readonly PackCount[];
  readonly costCoins: number;
  /** In the Store afterwards: on hand plus bought minus the need. */
  readonly leftOver: number;
}

export type PackFault =
  | { readonly kind: 'no-packs' }
  | { readonly kind: 'no-amount'; readonly pack: string }
  | { readonly kind: 'no-price'; readonly pack: string };

/** Binary noise removed from a need, in its unit. */
const NOISE = 1e-9;
/** Tolerance of a bound in coins; far under one coin. */
const COIN_NOISE = 1e-7;

interface RankedPack extends PackCount {
  /** Coins for one unit of amount. */
  readonly density: number;
  /** More than this many never help. */
  readonly most: number;
}

interface Found {
  readonly counts: readonly number[];
  readonly costCoins: number;
  readonly over: number;
  readonly pieces: number;
}

/**
 * The packs of least cost, proven, among all whole-pack sums that cover the need less what is on hand. Ties: more left
 * over if it keeps, otherwise less; then fewer packs; then the same answer for any order of packs. Any amounts work,
 * once converted to the unit of the need.
 */
export function packMix(question: PackQuestion): Result<PackChoice, PackFault> {
  const short = question.need - question.onHand;
  if (short <= NOISE) return ok({ packs: [], costCoins: 0, leftOver: withoutNoise(-short) });
  const fault = faultOf(question.packs);
  if (fault) return failed(fault);
  const packs = ranked(question.packs);
  const found = leastCost(short, packs, question.keeps);
  return ok({
    packs: counted(packs, found.counts),
    costCoins: found.costCoins,
    leftOver: withoutNoise(found.over),
  });
}

function faultOf(packs: readonly PackOffer[]): PackFault | undefined {
  if (packs.length === 0) return { kind: 'no-packs' };
  const empty = packs.find((pack) => !(pack.amount > NOISE));
  if (empty) return { kind: 'no-amount', pack: empty.id };
  const unpriced = packs.find((pack) => pack.priceCoins === undefined || !(pack.priceCoins >= 0));
  return unpriced && { kind: 'no-price', pack: unpriced.id };
}

/** Cheapest per unit first; of equal ones the larger first, then by id. */
function ranked(packs: readonly PackOffer[]): readonly RankedPack[] {
  const plain = packs.map(({ id, amount, priceCoins = 0 }) => ({ id, amount, priceCoins, count: 0 }));
  const sorted = plain.toSorted((a, b) => byDensity(a, b) || b.amount - a.amount || (a.id < b.id ? -1 : 1));
  return sorted.map((pack) => ({
    ...pack,
    density: pack.priceCoins / pack.amount,
    most: mostOf(pack, sorted.find((other) => byDensity(pack, other) === 0) ?? pack),
  }));
}

function byDensity(a: PackCount, b: PackCount): number {
  const left = a.priceCoins * b.amount;
  const right = b.priceCoins * a.amount;
  return Math.abs(left - right) <= 1e-12 * left ? 0 : left - right;
}

/**
 * Of packs with the same unit price, the number of a smaller one that makes a whole number of the largest is replaced
 * by those, at the same cost and amount with fewer pieces. Other packs are limited by cost alone.
 */
function mostOf(pack: PackCount, largest: PackCount): number {
  if (pack === largest || largest.priceCoins === 0) return Infinity;
  return largest.priceCoins / commonDivisor(largest.priceCoins, pack.priceCoins) - 1;
}

function commonDivisor(a: number, b: number): number {
  return b === 0 ? a : commonDivisor(b, a % b);
}

/**
 * Branch and bound, best pack first and as many of it as could help. What is still missing costs at least the unit
 * prices of the packs left, so a branch above the best sum found is dropped as a whole.
 */
function leastCost(short: number, packs: readonly RankedPack[], keeps: boolean): Found {
  const counts = packs.map(() => 0);
  const reached: Map<number, { readonly cost: number; readonly pieces: number }>[] = [];
  const step = packs.reduce((all, pack) => commonDivisor(all, pack.priceCoins), 0);
  const largestFrom = packs.map((_, level) => Math.max(...packs.slice(level).map((pack) => pack.amount)));
  let best: Found = { counts, costCoins: Infinity, over: 0, pieces: Infinity };

  function offer(costCoins: number, over: number, pieces: number): void {
    if (isBetter({ costCoins, over, pieces }, best, keeps)) best = { counts: [...counts], costCoins, over, pieces };
  }

  /** The same shortfall was reached before at this pack, with no more cost and pieces. */
  function metBefore(level: number, missing: number, cost: number, pieces: number): boolean {
    if (level >= packs.length - 1) return false;
    const key = Math.round(missing / NOISE);
    const met = (reached[level] ??= new Map());
    const before = met.get(key);
    if (before && (before.cost < cost || (before.cost === cost && before.pieces <= pieces))) return true;
    met.set(key, { cost, pieces });
    return false;
  }

  /**
   * At the cost of the best, packs from `level` on could still give a better left-over, or the same with fewer pieces.
   */
  function mayTie(level: number, left: number, spent: number, pieces: number): boolean {
    const [cheapest, dearest] = [packs[level], packs.at(-1)];
    if (!cheapest || !dearest || cheapest.density === 0) return true;
    const budget = best.costCoins - spent;
    const over = budget / (keeps ? cheapest : dearest).density - left;
    const fewest = pieces + countUp(left / (largestFrom[level] ?? 1));
    return isBetter({ costCoins: best.costCoins, over: Math.max(0, over), pieces: fewest }, best, keeps);
  }

  function take(level: number, missing: number, cost: number, pieces: number): void {
    const pack = packs[level];
    if (!pack) return;
    const enough = Math.ceil((missing - NOISE) / pack.amount);
    for (let count = Math.min(enough, pack.most); count >= 0; count -= 1) {
      const left = missing - count * pack.amount;
      const spent = cost + count * pack.priceCoins;
      counts[level] = count;
      if (left <= NOISE) {
        offer(spent, -left, pieces + count);
        continue;
      }
      const least = spent + leastFor(left, packs, level + 1);
      if (least > best.costCoins + COIN_NOISE) break;
      const cheaper = least <= best.costCoins - step + COIN_NOISE;
      if (!cheaper && !mayTie(level + 1, left, spent, pieces + count)) continue;
      if (!metBefore(level + 1, left, spent, pieces + count)) take(level + 1, left, spent, pieces + count);
    }
    counts[level] = 0;
  }

  take(0, short, 0, 0);
  return best;
}

/**
 * A lower bound: no whole-pack sum of the packs from `level` on covers this much for less; in coins, with fractions.
 */
function leastFor(missing: number, packs: readonly RankedPack[], level: number): number {
  let left = missing;
  let cost = 0;
  for (let at = level; at < packs.length; at += 1) {
    const pack = packs[at];
    if (!pack) break;
    const room = pack.most * pack.amount;
    if (left <= room + NOISE) return cost + left * pack.density;
    cost += room * pack.density;
    left -= room;
  }
  return Infinity;
}

function isBetter(one: Omit<Found, 'counts'>, than: Found, keeps: boolean): boolean {
  if (one.costCoins !== than.costCoins) return one.costCoins < than.costCoins;
  if (Math.abs(one.over - than.over) > NOISE) return keeps ? one.over > than.over : one.over < than.over;
  return one.pieces < than.pieces;
}

function counted(packs: readonly RankedPack[], counts: readonly number[]): readonly PackCount[] {
  return packs
    .map(({ id, amount, priceCoins }, at) => ({ id, amount, count: counts[at] ?? 0, priceCoins }))
    .filter((pack) => pack.count > 0)
    .toSorted((a, b) => b.amount - a.amount);
}

function withoutNoise(amount: number): number {
  return Math.abs(amount) < NOISE ? 0 : amount;
}

export const packMixEntry = listFunction({
  name: 'PACK_MIX',
  title: 'Pack mix',
  group: 'buying',
  takes: 'need, what is on hand, packs with their prices, whether left-overs keep',
  gives: 'packs, cost and left over',
  sum: 'least cost among all whole-pack sums that cover need less on hand',
  help: 'Which packs to buy. Where two sums cost the same, a material that keeps takes the one with more left over, others the one with less; then fewer packs.',
  examples: [
    { rule: '57.134 L from 10 L at 9.80 and 45 L at 31.50', gives: '1 x 45 L + 2 x 10 L, 51.10' },
    { rule: '30.458 L from 8 L at 13.50 and 40 L at 54.00, keeps', gives: '1 x 40 L, 54.00' },
  ],
  source: 'branch and bound over whole packs, exact',
});
