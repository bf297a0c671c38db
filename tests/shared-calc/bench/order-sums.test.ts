import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { knownSums, orderSums, type KnownSums, type Pricing } from '#shared-calc/bench/order-sums.ts';
import type { Goods, PriceBook } from '#shared-calc/buy/price-book.ts';
import { onceBench } from '#shared-calc/bench/once-bench.ts';
import { demoOnce, demoPricing, demoRecords } from '#tests/demo-bench.ts';

const records = demoRecords();
const bench = demoOnce({ sizes: ['T05', 'T07'] }, records);
const keys = ['T05', 'T07'];
const demo = demoPricing(records);

describe('knownSums', () => {
  const whole = sumsWith(demo, []);
  const needed = whole.needs.needs.map(({ material }) => material);

  test('with every price there, nothing is missing and the sums are those of the order', () => {
    const sums = orderSums(bench, keys, demo);
    expect([whole.missing, whole.guesses, whole.hoursKnown]).toEqual([[], [], true]);
    expect(sums.ok && sums.value.quote).toEqual(whole.quote);
  });

  test('without a price hours and quantities are there, and every missing price is named at once', () => {
    const none = sumsWith(demo, needed);
    const amounts = ({ needs: { needs } }: KnownSums) => needs.map(({ material, used }) => [material, used]);
    expect(none.quote.hours).toBe(whole.quote.hours);
    expect(amounts(none)).toEqual(amounts(whole));
    expect(none.missing.map(({ what, of }) => [what, of])).toEqual(needed.map((of) => ['price', of]));
    expect(orderSums(bench, keys, { ...demo, prices: without(demo.prices, needed) })).toEqual({
      ok: false,
      fault: { kind: 'figures-not-given', missing: none.missing },
    });
  });

  test('a size that is not measured names the measure once, and the other size counts', () => {
    const tanks = bench.input().columns.map(({ tank: { damHeightMm: _, ...tank }, ...column }, at) => {
      return at === 0
        ? { ...column, tank }
        : { ...column, tank: { ...tank, ...(_ !== undefined && { damHeightMm: _ }) } };
    });
    const undammed = onceBench({ ...bench.input(), columns: tanks });
    const sums = knownSums(undammed, keys, demo);
    const alone = sumsWith(demo, [], ['T07']);
    expect(sums.ok && sums.value.missing.map(({ what, of, label }) => ({ what, of, label }))).toEqual([
      { what: 'measure', of: 'T05', label: 'T05, dam' },
    ]);
    expect(sums.ok && sums.value.quote.costCoins).toBeGreaterThan(alone.quote.costCoins);
    expect(sums.ok && sums.value.hoursKnown).toBe(false);
  });

  test('a price that becomes known never lowers a sum that is at least so much', () => {
    fc.assert(
      fc.property(
        fc.record({
          order: fc.shuffledSubarray(needed, { minLength: 1, maxLength: 8 }),
          basis: fc.constantFrom('used' as const, 'packs' as const),
          discountShare: fc.double({ min: 0, max: 0.5, noNaN: true }),
          contingencyShare: fc.double({ min: 0, max: 0.3, noNaN: true }),
          priceStepCoins: fc.constantFrom(0, 500, 100_000),
        }),
        ({ order, basis, ...shares }) => {
          const pricing: Pricing = { ...demo, basis, rules: { ...demo.rules, ...shares } };
          const steps = Array.from({ length: order.length + 1 }, (_, known) => sumsWith(pricing, order.slice(known)));
          for (const [at, next] of steps.entries()) {
            const before = steps[at - 1];
            if (!before) continue;
            expect(loweredFrom(before, next)).toEqual([]);
          }
          const [last] = steps.slice(-1);
          const full = orderSums(bench, keys, pricing);
          expect(full.ok && full.value.quote).toEqual(last?.quote);
        },
      ),
      { numRuns: 25 },
    );
  });
});

/** Names of the sums that are less than before. */
function loweredFrom(before: KnownSums, after: KnownSums): readonly string[] {
  const [was, is] = [sumsOf(before), sumsOf(after)];
  return Object.keys(was).filter((name) => (is[name] ?? 0) < (was[name] ?? 0));
}

function sumsOf({ quote, needs }: KnownSums): Readonly<Record<string, number>> {
  const { costCoins, netCoins, grossCoins, depositCoins, hours } = quote;
  const { totalCoins, packsTotalCoins, landedCoins } = needs;
  return { costCoins, netCoins, grossCoins, depositCoins, hours, totalCoins, packsTotalCoins, landedCoins };
}

function sumsWith(pricing: Pricing, unpriced: readonly string[], columns = keys): KnownSums {
  const sums = knownSums(bench, columns, { ...pricing, prices: without(pricing.prices, unpriced) });
  if (!sums.ok) throw new Error(sums.fault.kind);
  return sums.value;
}

/** A price book in which some goods have packs and no price. */
function without(prices: PriceBook, unpriced: readonly string[]): PriceBook {
  const goods = [...prices.goods].map(([id, each]): readonly [string, Goods] => {
    if (!unpriced.includes(id)) return [id, each];
    const { material, label, unit } = each;
    return [id, { ...each, packs: [], fault: { kind: 'no-price', material, label, unit, amount: 1, on: prices.on } }];
  });
  return { ...prices, goods: new Map(goods) };
}
