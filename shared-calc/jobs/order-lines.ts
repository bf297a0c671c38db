import { NOTHING } from '#shared-calc/buy/ledger.ts';
import type { MaterialNeed } from '#shared-calc/buy/material-need.ts';
import type { OrderLine } from '#shared-calc/buy/order-standing.ts';
import { shareCoins } from '#shared-calc/trade/price/share-coins.ts';
import { roundCoins } from '#shared-calc/trade/price/coin-rounding.ts';
import type { PricedPlant } from './choose-plants.ts';
import type { PaneCut } from './pane-cuts.ts';

/** An amount of goods for a job; an order of sizes alone has no job, `''`. */
export interface Part {
  readonly job: string;
  readonly amount: number;
}

export interface JobPane extends PaneCut {
  readonly job: string;
}

/** Plants of one kind that a job is to get. */
export interface SpeciesWanted {
  readonly job: string;
  readonly plant: PricedPlant;
  readonly count: number;
  readonly shade: boolean;
}

/** A material to buy, and what is known of it that its supplier needs. */
export interface ToOrder {
  readonly need: Pick<MaterialNeed, 'material' | 'label' | 'unit' | 'sale' | 'packs' | 'packsCoins'>;
  /** What is bought for each job, those that use it first first. */
  readonly parts: readonly Part[];
  /** Coins for one unit, with fractions of a coin: for plants of a kind without a price, the price of their class. */
  readonly unitCoins: number;
  readonly panes: readonly JobPane[];
  /** None unless the material stands for a class of plants. */
  readonly species: readonly SpeciesWanted[];
}

/** A line of an order that is not placed yet; `supplier` is somebody else's than the material's. */
export type LineDraft = Omit<OrderLine, 'n' | 'due' | 'for'> & {
  readonly for: readonly Part[];
  readonly supplier?: string;
};

/** A material as lines of an order: packs; panes by their cut; plants by name at their own price. */
export function orderLines(asked: ToOrder): readonly LineDraft[] {
  if (asked.species.length > 0) return plantLines(asked);
  return asked.need.sale === 'cut' ? cutLines(asked) : packLines(asked);
}

function packLines({ need, parts }: ToOrder): readonly LineDraft[] {
  const left = pool(parts);
  return need.packs.map(({ amount, count, priceCoins }) => ({
    ...goodsOf(need),
    amount,
    count,
    askedCoins: priceCoins,
    for: take(left, amount * count),
  }));
}

/** Pieces of one size to cut. */
interface Pieces {
  readonly amount: number;
  readonly count: number;
  readonly for: readonly Part[];
  readonly cut?: OrderLine['cut'];
}

/** Lines that come to what the run asks for them, to the coin. */
function cutLines({ need, parts, panes }: ToOrder): readonly LineDraft[] {
  const left = pool(parts);
  const pieces = need.unit === 'm2' ? panes.flatMap((pane) => panePieces(pane, left)) : [];
  const rest = [...left.values()].reduce((sum, amount) => sum + amount, 0);
  if (rest > NOTHING) {
    const count = need.unit === 'each' ? Math.ceil(rest - NOTHING) : 1;
    pieces.push({ amount: rest / count, count, for: take(left, rest) });
  }
  const weights = pieces.map(({ amount, count }) => Math.round(amount * count * MILLION));
  const coins = shareCoins(need.packsCoins, weights);
  return pieces.flatMap((each, at) => priced(each, coins[at] ?? 0).map((line) => ({ ...goodsOf(need), ...line })));
}

/** Coins are shared by whole weights. */
const MILLION = 1e6;

/** Only as many pieces as are still to be bought for the job. */
function panePieces({ job, pieces, lengthMm, depthMm, glassMm }: JobPane, left: Map<string, number>): Pieces[] {
  const amount = (lengthMm * depthMm) / 1e6;
  const count = Math.min(pieces, Math.floor(((left.get(job) ?? 0) + NOTHING) / amount));
  if (count < 1) return [];
  const taken = amount * count;
  left.set(job, Math.max(0, (left.get(job) ?? 0) - taken));
  return [{ amount, count, cut: { lengthMm, depthMm, glassMm }, for: forJob({ job, amount: taken }) }];
}

/** Pieces at a price for each: some cost a coin more where their sum does not divide. */
function priced({ count, for: parts, ...piece }: Pieces, coins: number) {
  const each = Math.floor(coins / count);
  const dearer = coins - each * count;
  const left = pool(parts);
  return [
    { ...piece, count: dearer, askedCoins: each + 1 },
    { ...piece, count: count - dearer, askedCoins: each },
  ]
    .filter((line) => line.count > 0)
    .map((line) => ({ ...line, for: take(left, line.count * line.amount) }));
}

/** By name, as many of each class as the run buys; what no kind is chosen for is bought as the class. */
function plantLines({ need, parts, unitCoins, species }: ToOrder): readonly LineDraft[] {
  const left = pool(parts);
  let more = need.packs.reduce((sum, { amount, count }) => sum + amount * count, 0);
  const lines: LineDraft[] = [];
  for (const [id, same] of Map.groupBy(species, ({ plant }) => plant.id)) {
    const [{ plant } = { plant: undefined }] = same;
    if (!plant) continue;
    const shares = same.flatMap(({ job, count }) => takeOf(left, job, Math.min(count, more)));
    const count = shares.reduce((sum, { amount }) => sum + amount, 0);
    if (count < 1) continue;
    more -= count;
    const label = `${plant.name}${same.some(({ shade }) => shade) ? ', to be planted in shade' : ''}`;
    const askedCoins = plant.priceCoins ?? roundCoins(unitCoins);
    const { supplier } = plant;
    const jobs = shares.filter(({ job }) => job !== '');
    lines.push({
      of: id,
      label,
      amount: 1,
      unit: 'each',
      count,
      askedCoins,
      for: jobs,
      ...(supplier !== undefined && { supplier }),
    });
  }
  if (more < 1) return lines;
  const label = `${need.label}, kind still to be chosen`;
  const askedCoins = roundCoins(unitCoins);
  return [...lines, { ...goodsOf(need), label, amount: 1, count: more, askedCoins, for: take(left, more) }];
}

function goodsOf({ material: of, label, unit }: ToOrder['need']): Pick<OrderLine, 'of' | 'label' | 'unit'> {
  return { of, label, unit };
}

function pool(parts: readonly Part[]): Map<string, number> {
  return new Map(parts.map(({ job, amount }) => [job, amount]));
}

/** Amounts of the pool in its order, up to the most there is; they leave it. */
function take(left: Map<string, number>, most: number): readonly Part[] {
  let rest = most;
  const taken: Part[] = [];
  for (const job of left.keys()) {
    const parts = takeOf(left, job, rest);
    rest -= parts.reduce((sum, { amount }) => sum + amount, 0);
    taken.push(...parts);
  }
  return taken.filter(({ job }) => job !== '');
}

function takeOf(left: Map<string, number>, job: string, most: number): readonly Part[] {
  const amount = Math.min(left.get(job) ?? 0, most);
  if (amount <= NOTHING) return [];
  left.set(job, (left.get(job) ?? 0) - amount);
  return [{ job, amount }];
}

function forJob(part: Part): readonly Part[] {
  return part.job === '' ? [] : [part];
}
