import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { contentOf, sayPack } from '#shared-calc/buy/pack-said.ts';
import { plainDisplay } from '#shared-calc/quantity/shown-unit.ts';
import { packIn } from '#shared-calc/read/list-pack.ts';
import { listedPrices, priceListCsv } from '#shared-calc/papers/price-list-csv.ts';
import { demoRecords } from '#tests/demo-bench.ts';

describe('sayPack', () => {
  test.each([
    [45.424941408, 'L', '12 gal', '12\u00a0gal'],
    [11.33980925, 'kg', '25 lb', '25\u00a0lb'],
    [45, 'L', undefined, '45\u00a0L'],
    [46, 'L', '12 gal', '46\u00a0L'],
    [5, 'each', undefined, '5\u00a0pieces'],
  ])('%s %s that came as %s is %s', (amount, unit, text, said) => {
    const typed = text === undefined ? {} : { typed: { amount: text } };
    expect(sayPack({ amount, ...typed }, unit, plainDisplay)).toBe(said);
  });
});

describe('contentOf', () => {
  test('what a supplier says comes back as exactly the amount that is stored', () => {
    const units = [
      ['gal', 'L'],
      ['qt', 'L'],
      ['fl_oz', 'L'],
      ['lb', 'kg'],
      ['oz', 'g'],
      ['ft', 'm'],
    ] as const;
    fc.assert(
      fc.property(fc.constantFrom(...units), fc.integer({ min: 1, max: 100_000 }), ([unit, own], hundredths) => {
        const written = { amount: hundredths / 100, unit };
        const amount = packIn(written, own) ?? 0;
        const content = contentOf({ amount, typed: { amount: `${written.amount} ${unit}` } }, own);
        expect(packIn(content, own)).toBe(amount);
        expect(content.unit).toBe(unit);
      }),
    );
  });
});

describe('priceListCsv', () => {
  test('a pack goes out as its supplier says it', () => {
    const records = demoRecords();
    const pack = { id: 'M01-45.424941408', material: 'M01', amount: 45.424941408, typed: { amount: '12 gal' } };
    const price = { id: 'PP-gal', pack: pack.id, from: '2027-01-04', priceCoins: 3850 };
    const after = {
      ...records,
      pack: new Map(records.pack).set(pack.id, pack),
      packPrice: new Map(records.packPrice).set(price.id, price),
    };
    expect(priceListCsv(listedPrices(after, '2027-03-08'), after)).toContain(
      'Expanded clay 8-16 mm,12,gal,38.50,2027-01-04',
    );
  });
});
