import fc from 'fast-check';
import type { Goods, PackOnSale, PriceBook } from '#shared-calc/buy/price-book.ts';
import type { NeedAmount } from '#shared-calc/buy/needs.ts';
import type { RunPart } from '#shared-calc/buy/shopping-run.ts';
import type { Stock } from '#shared-calc/buy/stock.ts';
import type { Supplier } from '#shared-calc/records/records.ts';

/*
 * Random shopping runs: packs, needs and stock in whole tenths of a litre, so that a solver works on
 * integers and no result depends on the last binary digit.
 */

export interface RandomRun {
  readonly parts: readonly RunPart[];
  readonly prices: PriceBook;
  readonly stock: Stock;
}

/** A whole-pack problem: the cheapest packs that cover a number of tenths. */
export interface PackCase {
  readonly shortTenths: number;
  readonly packs: readonly { readonly id: string; readonly tenths: number; readonly priceCoins: number }[];
}

interface Most {
  readonly materials: number;
  readonly builds: number;
  readonly needTenths: number;
}

/** Materials with up to 5 packs each from three suppliers, for up to three jobs, some in stock. */
export function randomRuns({ materials, builds, needTenths }: Most): fc.Arbitrary<RandomRun> {
  const material = fc.record({
    packs: fc.uniqueArray(
      fc.record({ tenths: fc.integer({ min: 5, max: 800 }), dear: fc.integer({ min: 70, max: 130 }) }),
      { minLength: 1, maxLength: 5, selector: ({ tenths }) => tenths },
    ),
    keeps: fc.boolean(),
    supplier: fc.constantFrom('S1', 'S2', 'S3'),
    stock: fc.oneof(fc.constant(0), fc.integer({ min: 1, max: needTenths })),
    needs: fc.array(fc.integer({ min: 0, max: needTenths }), { minLength: 3, maxLength: 3 }),
  });
  const terms = fc.record({
    carriage: fc.integer({ min: 0, max: 2500 }),
    free: fc.option(fc.integer({ max: 60_000 })),
  });
  return fc
    .record({
      materials: fc.array(material, { minLength: 1, maxLength: materials, size: 'max' }),
      terms: fc.array(terms, { minLength: 3, maxLength: 3 }),
      counts: fc.array(fc.integer({ min: 1, max: builds }), { minLength: 3, maxLength: 3 }),
    })
    .map(({ materials: drawn, terms: termsOf, counts }) => ({
      parts: counts.map((count, job) => ({
        id: `J${job}`,
        job: `J${job}`,
        needs: drawn.map(({ needs }, at) => needOf(`M${at}`, `J${job}`, { tenths: needs[job] ?? 0, count })),
      })),
      prices: {
        on: '2027-03-10',
        goods: byKey(
          drawn.map(({ packs, keeps, supplier }, at) => goodsOf(`M${at}`, packs.map(packOf), { keeps, supplier })),
        ),
        suppliers: new Map(
          termsOf.map(({ carriage, free }, at) => [`S${at + 1}`, supplierOf(`S${at + 1}`, carriage, free)]),
        ),
      },
      stock: new Map(drawn.flatMap(({ stock }, at) => (stock > 0 ? [[`M${at}`, stock / 10]] : []))),
    }));
}

/** The problem for each material of a run: its total need minus the stock, in tenths. */
export function packCases({ parts, prices, stock }: RandomRun): readonly PackCase[] {
  return [...prices.goods].map(([material, { packs }]) => {
    const needs = parts.flatMap((part) => part.needs.filter((need) => need.material === material));
    const need = needs.reduce((sum, { amount, count }) => sum + Math.round(amount * 10) * count, 0);
    return {
      shortTenths: need - Math.round((stock.get(material) ?? 0) * 10),
      packs: packs.map(({ id, amount, priceCoins }) => ({ id, tenths: Math.round(amount * 10), priceCoins })),
    };
  });
}

/** Larger packs cost a little less per litre, as in shops. */
function packOf({ tenths, dear }: { readonly tenths: number; readonly dear: number }): PackOnSale {
  const priceCoins = Math.max(1, Math.round((tenths / 10) ** 0.9 * dear));
  return { id: `p${tenths}`, amount: tenths / 10, priceCoins, from: '2027-03-01', old: false };
}

function goodsOf(
  material: string,
  packs: readonly PackOnSale[],
  { keeps, supplier }: { readonly keeps: boolean; readonly supplier: string },
): Goods {
  const sorted = packs.toSorted((one, other) => one.amount - other.amount);
  return { material, label: material, unit: 'L', supplier, sale: 'packs', keeps, packs: sorted };
}

function needOf(
  material: string,
  column: string,
  { tenths, count }: { readonly tenths: number; readonly count: number },
): NeedAmount {
  return { line: `${material}_need`, material, group: 'media', amount: tenths / 10, perJob: false, column, count };
}

function supplierOf(id: string, carriageCoins: number, free: number | null): Supplier {
  const terms = free === null ? {} : { freeFromCoins: free };
  return { id, name: `Supplier ${id}`, sells: 'media', leadDays: 3, carriageCoins, ...terms, note: '' };
}

function byKey(goods: readonly Goods[]): ReadonlyMap<string, Goods> {
  return new Map(goods.map((each) => [each.material, each]));
}
