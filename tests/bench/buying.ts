import { solve } from 'yalps';
import type { Goods, PriceBook } from '#shared-calc/buy/price-book.ts';
import { shoppingRun, type RunPart } from '#shared-calc/buy/shopping-run.ts';
import { NO_STOCK } from '#shared-calc/buy/stock.ts';
import { measure, ms, ratio, type Told } from './measure.ts';

const MATERIALS = 30;
const BUILDS = 100;

/** What one build, or all together, need of one material. */
interface Case {
  readonly need: number;
  readonly packs: Goods['packs'];
}

/**
 * A shopping run of 100 builds x 30 materials, all together and each build alone: 3,030 least-cost problems, compared
 * with an integer solver on the same problems.
 */
export function benchBuying(): readonly Told[] {
  const prices = madePrices();
  const parts = madeParts();
  const cases = casesOf(parts, prices);
  const ours = measure({ times: 9 }, () => shoppingRun(parts, { prices, stock: NO_STOCK }));
  const theirs = measure({ times: 3, warm: 1 }, () => {
    for (const each of cases) solveCase(each);
  });
  const least = cases.reduce((sum, each) => sum + solveCase(each), 0);
  const dearer = Math.round(coinsOf(parts, prices) - least);
  const what = `run of ${BUILDS} builds x ${MATERIALS} materials, ${dearer} coins dearer than the solver`;
  const factor = ratio(ours.median / theirs.median);
  return [{ what, took: ms(ours.median), floor: `integer solver ${ms(theirs.median)}`, ratio: factor, must: '50 ms' }];
}

function coinsOf(parts: readonly RunPart[], prices: PriceBook): number {
  const run = shoppingRun(parts, { prices, stock: NO_STOCK });
  return run.ok ? run.value.togetherCoins + run.value.aloneCoins : Number.POSITIVE_INFINITY;
}

/** The next of a sequence of whole numbers under `most`, the same in every run. */
function counter(): (most: number) => number {
  let seed = 7;
  return (most) => {
    seed = (seed * 1_103_515_245 + 12_345) % 2_147_483_648;
    return seed % most;
  };
}

function madePrices(): PriceBook {
  const next = counter();
  const goods = Array.from({ length: MATERIALS }, (_, at): Goods => {
    const packs = [4, 10, 25, 45, 80].slice(0, 2 + (at % 4)).map((size) => {
      const priceCoins = Math.round(size * (90 - size / 4) + next(300));
      return { id: `P${size}`, amount: size + next(3), priceCoins, from: '2027-03-01', old: false };
    });
    const material = `M${at}`;
    return { material, label: material, unit: 'L', supplier: 'S', sale: 'packs', keeps: true, packs };
  });
  const terms = { name: 'S', sells: '', leadDays: 3, carriageCoins: 750, freeFromCoins: 9000, note: '' };
  return {
    on: '2027-03-10',
    goods: new Map(goods.map((each) => [each.material, each])),
    suppliers: new Map([['S', { id: 'S', ...terms }]]),
  };
}

function madeParts(): readonly RunPart[] {
  const next = counter();
  return Array.from({ length: BUILDS }, (_build, build) => ({
    id: `J${build}`,
    job: `J${build}`,
    needs: Array.from({ length: MATERIALS }, (_material, at) => ({
      line: `M${at}_need`,
      material: `M${at}`,
      group: 'media',
      amount: (20 + next(400)) / 10,
      perJob: false,
      column: `J${build}`,
      count: 1,
    })),
  }));
}

/** The same problems for the solver: each material over all builds, then of each build. */
function casesOf(parts: readonly RunPart[], { goods }: PriceBook): readonly Case[] {
  const needs = parts.flatMap((part) => part.needs);
  const packsOf = (material: string) => goods.get(material)?.packs ?? [];
  const together = [...Map.groupBy(needs, ({ material }) => material)].map(([material, same]) => ({
    need: same.reduce((sum, { amount }) => sum + amount, 0),
    packs: packsOf(material),
  }));
  return [...together, ...needs.map(({ material, amount }) => ({ need: amount, packs: packsOf(material) }))];
}

function solveCase({ need, packs }: Case): number {
  const solution = solve(
    {
      direction: 'minimize',
      objective: 'cost',
      // Binary noise of a sum must not add a pack.
      constraints: { amount: { min: need - 1e-9 } },
      variables: Object.fromEntries(packs.map(({ id, amount, priceCoins }) => [id, { amount, cost: priceCoins }])),
      integers: true,
    },
    { tolerance: 0 },
  );
  return solution.result;
}
