import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { priceBook, type Goods, type PriceBook } from '#shared-calc/buy/price-book.ts';
import { shoppingRun, type ShoppingRun } from '#shared-calc/buy/shopping-run.ts';
import { demoRecords, need, withRecords } from './demo-goods.ts';
import { randomRuns } from './random-runs.ts';

const day = { on: '2027-07-15', oldPriceDays: 180 };

/** The demo's goods, and another supplier who sells clay by 20 L and travels free from 50. */
const twoSell = priceBook(
  withRecords({
    supplier: [
      { id: 'quarry', name: 'Quarry Yard', sells: '', leadDays: 5, carriageCoins: 900, freeFromCoins: 5000, note: '' },
    ],
    pack: [{ id: 'M01-20', material: 'M01', amount: 20, supplier: 'quarry' }],
    packPrice: [{ id: 'quarry', pack: 'M01-20', from: '2027-07-01', priceCoins: 1700 }],
  }),
  day,
);

function runOf(prices: PriceBook, litres: number, from?: ReadonlyMap<string, string>): ShoppingRun {
  const parts = [{ id: 'J1', job: 'J1', needs: [need('M01', litres)] }];
  const run = shoppingRun(parts, { prices, stock: new Map(), ...(from && { from }) });
  if (!run.ok) throw new Error(JSON.stringify(run.fault));
  return run.value;
}

function said({ materials, landedTogetherCoins }: ShoppingRun) {
  const offers = materials.flatMap((each) => each.offers ?? []);
  return {
    landed: landedTogetherCoins,
    from: materials.map(({ supplier }) => supplier),
    offers: offers.map(({ supplier, coins, landedCoins, taken, secondBest }) => [
      supplier,
      coins,
      landedCoins,
      taken ? 'taken' : secondBest ? 'second best' : '',
    ]),
  };
}

describe('a run over several suppliers', () => {
  test('57.134 L of clay land for 51.00 from the second supplier, and for 58.60 from the usual one', () => {
    expect(said(runOf(twoSell, 57.134))).toEqual({
      landed: 5100,
      from: ['quarry'],
      offers: [
        ['hollin', 5110, 5860, 'second best'],
        ['quarry', 5100, 5100, 'taken'],
      ],
    });
  });

  test('the usual supplier is taken by hand, and the other is what it could be', () => {
    expect(said(runOf(twoSell, 57.134, new Map([['M01', 'hollin']])))).toEqual({
      landed: 5860,
      from: ['hollin'],
      offers: [
        ['hollin', 5110, 5860, 'taken'],
        ['quarry', 5100, 5100, 'second best'],
      ],
    });
  });

  test('a quote is priced by the usual supplier, whoever sells for less', () => {
    expect([twoSell.goods.get('M01')?.supplier, twoSell.goods.get('M01')?.packs.map(({ amount }) => amount)]).toEqual([
      'hollin',
      [10, 45],
    ]);
  });

  test('what the usual supplier has no price for is bought from whoever has one', () => {
    const prices = priceBook({ ...demoRecords, ...withQuarryAlone() }, day);
    expect(said(runOf(prices, 57.134))).toMatchObject({ landed: 5100, from: ['quarry'] });
  });

  test('an offer more never makes a run land for more', () => {
    const extra = fc.record({
      at: fc.nat(59),
      supplier: fc.constantFrom('S1', 'S2', 'S3'),
      dear: fc.integer({ min: 50, max: 150 }),
    });
    fc.assert(
      fc.property(
        randomRuns({ materials: 12, builds: 3, needTenths: 300 }),
        fc.array(extra, { minLength: 1, maxLength: 8 }),
        (random, extras) => {
          const landed = [...extras.keys(), extras.length].map((count) => {
            const run = shoppingRun(random.parts, {
              ...random,
              prices: withOffers(random.prices, extras.slice(0, count)),
            });
            return run.ok && run.value.proven ? run.value.landedTogetherCoins : Number.NaN;
          });
          expect(landed).toEqual(landed.toSorted((one, other) => other - one));
        },
      ),
      { numRuns: 150, seed: 20_270_308 },
    );
  });
});

function withQuarryAlone() {
  const { pack, packPrice, supplier } = withRecords({
    supplier: [
      { id: 'quarry', name: 'Quarry Yard', sells: '', leadDays: 5, carriageCoins: 900, freeFromCoins: 5000, note: '' },
    ],
    pack: [{ id: 'M01-20', material: 'M01', amount: 20, supplier: 'quarry' }],
    packPrice: [{ id: 'quarry', pack: 'M01-20', from: '2027-07-01', priceCoins: 1700 }],
  });
  return { pack, supplier, packPrice: new Map([...packPrice].filter(([id]) => id === 'quarry')) };
}

interface Extra {
  readonly at: number;
  readonly supplier: string;
  readonly dear: number;
}

/** The usual packs at another supplier, for a share of their price. */
function withOffers(prices: PriceBook, extras: readonly Extra[]): PriceBook {
  const offers = new Map<string, readonly Goods[]>();
  for (const { at, supplier, dear } of extras) {
    const usual = prices.goods.get(`M${at % prices.goods.size}`);
    if (!usual) continue;
    const known = offers.get(usual.material) ?? [usual];
    if (known.some((goods) => goods.supplier === supplier)) continue;
    const packs = usual.packs.map((pack) => ({
      ...pack,
      priceCoins: Math.max(1, Math.round((pack.priceCoins * dear) / 100)),
    }));
    offers.set(usual.material, [...known, { ...usual, supplier, packs }]);
  }
  return { ...prices, offers };
}
