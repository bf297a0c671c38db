import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { solve } from 'yalps';
import { packMix, packMixEntry, type PackChoice, type PackOffer } from '#shared-calc/trade/buying/pack-mix.ts';

const clay = offers([10, 980], [45, 3150]);
const fern = offers([8, 1350], [40, 5400]);

describe('packMix', () => {
  test.each([
    {
      says: '57.134 L of clay is one big bag and two small',
      need: 57.134,
      packs: clay,
      buys: '1x45 2x10',
      coins: 5110,
    },
    { says: 'a tie of fern goes to the big bag, as fern keeps', need: 30.458, packs: fern, buys: '1x40', coins: 5400 },
    {
      says: 'bark for one tank is two small bags',
      need: 13.71,
      packs: offers([10, 890], [50, 3400]),
      buys: '2x10',
      coins: 1780,
    },
    {
      says: '530.84 g of leaves is a large and a small bag',
      need: 530.84,
      packs: offers([100, 520], [500, 1900]),
      buys: '1x500 1x100',
      coins: 2420,
    },
    { says: 'no need buys nothing', need: 0, packs: clay, buys: '', coins: 0 },
  ])('$says (trade sums, function 42)', ({ need, packs, buys, coins }) => {
    const choice = chosen({ need, packs });
    expect([said(choice), choice.costCoins]).toEqual([buys, coins]);
  });

  test('what is on hand comes off first, and the rest of the pack is left over', () => {
    expect(chosen({ need: 13.71, onHand: 6, packs: offers([9, 460], [70, 2450]) })).toEqual({
      packs: [{ id: 'p9', amount: 9, count: 1, priceCoins: 460 }],
      costCoins: 460,
      leftOver: expect.closeTo(1.29, 9) as number,
    });
  });

  test('enough on hand buys nothing and leaves the rest in the store', () => {
    expect(chosen({ need: 16, onHand: 20, packs: clay })).toEqual({ packs: [], costCoins: 0, leftOver: 4 });
  });

  test('a full pack and binary noise is one pack', () => {
    expect(said(chosen({ need: 10.0000000001, packs: clay }))).toBe('1x10');
  });

  test.each([
    { says: 'left-overs that keep are welcome at the same cost', keeps: true, buys: '1x40' },
    { says: 'left-overs that do not keep are not', keeps: false, buys: '4x8' },
  ])('$says', ({ keeps, buys }) => {
    expect(said(chosen({ need: 30.458, packs: fern, keeps }))).toBe(buys);
  });

  test('at the same cost and left over, fewer packs are carried home', () => {
    expect(said(chosen({ need: 60, packs: offers([10, 1000], [20, 2000], [30, 3000]) }))).toBe('2x30');
  });

  test('the order in which packs are listed changes nothing', () => {
    const twins = [
      { id: 'b', amount: 10, priceCoins: 980 },
      { id: 'a', amount: 10, priceCoins: 980 },
    ];
    expect(chosen({ need: 25, packs: twins })).toEqual(chosen({ need: 25, packs: twins.toReversed() }));
  });

  test('a pack given away is taken before one that costs, and no more of it than serves', () => {
    expect(said(chosen({ need: 12, packs: offers([5, 0], [10, 980]) }))).toBe('3x5');
  });

  test('5,000 L comes from the best packs with a small remainder', () => {
    const choice = chosen({ need: 5000, packs: offers([6, 720], [38, 2900]) });
    expect([said(choice), choice.costCoins, choice.leftOver]).toEqual(['131x38 4x6', 382_780, 2]);
  });

  test('litres and quarts side by side, at one price a litre, still come to an answer', () => {
    const packs = offers([42.475269888, 892], [10, 210], [9.46352946, 199], [8.80976754172, 185], [25, 525]);
    const choice = chosen({ need: 5993.29, packs });
    expect(choice.costCoins).toBe(leastBySolver(5993.29, packs));
  });

  test.each([
    { says: 'no packs at all', packs: [], fault: { kind: 'no-packs' } },
    { says: 'a pack that holds nothing', packs: offers([0, 100]), fault: { kind: 'no-amount', pack: 'p0' } },
    {
      says: 'a pack without a price',
      packs: [...clay, { id: 'new', amount: 80 }],
      fault: { kind: 'no-price', pack: 'new' },
    },
  ])('$says is refused', ({ packs, fault }) => {
    expect(packMix({ need: 5, onHand: 0, packs, keeps: true })).toEqual({ ok: false, fault });
  });

  test('300 needs and packs by chance cost what a general integer solver finds', () => {
    fc.assert(
      fc.property(anyNeed, anyPacks, fc.boolean(), (need, packs, keeps) => {
        expect(chosen({ need, packs, keeps }).costCoins).toBe(leastBySolver(need, packs));
      }),
      { numRuns: 300, seed: 42 },
    );
  });

  test('packs and what is on hand always cover the need, and the books balance', () => {
    fc.assert(
      fc.property(anyNeed, anyNeed, anyPacks, (need, onHand, packs) => {
        const choice = chosen({ need, onHand, packs });
        const bought = choice.packs.reduce((sum, pack) => sum + pack.count * pack.amount, 0);
        expect(choice.leftOver).toBeGreaterThanOrEqual(0);
        expect(onHand + bought - need).toBeCloseTo(choice.leftOver, 6);
        expect(choice.costCoins).toBe(choice.packs.reduce((sum, pack) => sum + pack.count * pack.priceCoins, 0));
      }),
    );
  });

  test('no pack is bought that could be left in the shop', () => {
    fc.assert(
      fc.property(anyNeed, anyPacks, fc.boolean(), (need, packs, keeps) => {
        const choice = chosen({ need, packs, keeps });
        for (const pack of choice.packs) expect(choice.leftOver).toBeLessThan(pack.amount);
      }),
    );
  });

  test('of all sums that cover, the cheapest, then the left over that is wanted, then the fewest packs', () => {
    fc.assert(
      fc.property(wholeNeed, fewWholePacks, fc.boolean(), (need, packs, keeps) => {
        const choice = chosen({ need, packs, keeps });
        const pieces = choice.packs.reduce((sum, pack) => sum + pack.count, 0);
        expect([choice.costCoins, choice.leftOver, pieces]).toEqual(bestByTrying({ need, packs, keeps }));
      }),
      { numRuns: 500 },
    );
  });

  test('less on hand never makes it cheaper', () => {
    fc.assert(
      fc.property(
        anyNeed,
        anyNeed,
        fc.double({ min: 0, max: 1, noNaN: true }),
        anyPacks,
        (need, onHand, share, packs) => {
          const full = chosen({ need, onHand, packs }).costCoins;
          expect(chosen({ need, onHand: onHand * share, packs }).costCoins).toBeGreaterThanOrEqual(full);
        },
      ),
    );
  });
});

describe('packMixEntry', () => {
  test('stands in the function book without a name in rules', () => {
    expect([packMixEntry.name, packMixEntry.inRules]).toEqual(['PACK_MIX', false]);
  });
});

const anyNeed = fc.integer({ min: 1, max: 40_000 }).map((hundredths) => hundredths / 100);
const anyPacks = fc
  .uniqueArray(fc.record({ size: fc.integer({ min: 1, max: 900 }), priceCoins: fc.integer({ min: 1, max: 9000 }) }), {
    minLength: 1,
    maxLength: 5,
    selector: (pack) => pack.size,
  })
  .map((packs) => packs.map(({ size, priceCoins }) => ({ id: `p${size}`, amount: size / 10, priceCoins })));
const wholeNeed = fc.integer({ min: 1, max: 40 });
const fewWholePacks = fc.uniqueArray(
  fc
    .record({ amount: fc.integer({ min: 1, max: 15 }), priceCoins: fc.integer({ min: 1, max: 12 }) })
    .map((pack) => ({ ...pack, id: `p${pack.amount}` })),
  { minLength: 1, maxLength: 3, selector: (pack) => pack.amount },
);

interface Asked {
  readonly need: number;
  readonly packs: readonly PackOffer[];
  readonly onHand?: number;
  readonly keeps?: boolean;
}

function offers(...packs: readonly (readonly [number, number])[]): readonly Required<PackOffer>[] {
  return packs.map(([amount, priceCoins]) => ({ id: `p${amount}`, amount, priceCoins }));
}

function chosen({ need, packs, onHand = 0, keeps = true }: Asked): PackChoice {
  const mix = packMix({ need, onHand, packs, keeps });
  expect(mix).toMatchObject({ ok: true });
  return mix.ok ? mix.value : { packs: [], costCoins: NaN, leftOver: NaN };
}

function said(choice: PackChoice): string {
  return choice.packs.map((pack) => `${pack.count}x${pack.amount}`).join(' ');
}

function leastBySolver(need: number, packs: readonly PackOffer[]): number {
  const solution = solve(
    {
      direction: 'minimize',
      objective: 'coins',
      constraints: { amount: { min: need } },
      variables: Object.fromEntries(
        packs.map((pack) => [pack.id, { amount: pack.amount, coins: pack.priceCoins ?? 0 }]),
      ),
      integers: true,
    },
    { tolerance: 0, maxIterations: Infinity, timeout: Infinity },
  );
  return Math.round(solution.result);
}

/** Cost, leftover and packs of the cheapest combination, found by trying every one that may cover the need. */
function bestByTrying({ need, packs, keeps = true }: Asked): readonly number[] {
  let sums: readonly (readonly number[])[] = [[0, 0, 0]];
  for (const { amount, priceCoins = 0 } of packs) {
    sums = sums.flatMap(([coins = 0, sum = 0, pieces = 0]) =>
      Array.from({ length: Math.max(1, Math.ceil((need - sum) / amount) + 1) }, (_, count) => [
        coins + count * priceCoins,
        sum + count * amount,
        pieces + count,
      ]),
    );
  }
  const covering = sums.filter(([, sum = 0]) => sum >= need);
  const [best] = covering.toSorted((a, b) => compare(a, b, keeps));
  return [best?.[0] ?? NaN, (best?.[1] ?? NaN) - need, best?.[2] ?? NaN];
}

function compare(a: readonly number[], b: readonly number[], keeps: boolean): number {
  const [coins = 0, sum = 0, pieces = 0] = a.map((part, at) => part - (b[at] ?? 0));
  return coins || (keeps ? -sum : sum) || pieces;
}
