import { describe, expect, test } from 'vitest';
import { needsOf, type NeedAmount, type NeedsList } from '#shared-calc/buy/needs.ts';
import { NO_STOCK, type Stock } from '#shared-calc/buy/stock.ts';
import { demoPrices, need } from './demo-goods.ts';

const mix = [need('M05', 13.71), need('M06', 13.71), need('M07', 9.14), need('M08', 4.57), need('M09', 4.57)];

describe('needsOf', () => {
  test('the mix of one T07 with stock on hand costs 66.00 in packs, 73.50 landed', () => {
    const list = listed(
      mix,
      new Map([
        ['M05', 6],
        ['M08', 2],
      ]),
    );
    expect(list.needs.map((each) => [each.material, said(each.packs), each.packsCoins])).toEqual([
      ['M05', '1x9', 460],
      ['M06', '2x10', 1780],
      ['M07', '2x8', 2700],
      ['M08', '1x5', 740],
      ['M09', '1x12', 920],
    ]);
    expect([list.packsTotalCoins, list.landedCoins]).toEqual([6600, 7350]);
    expect(list.needs.map((each) => each.leftOver.toFixed(3))).toEqual(['1.290', '6.290', '6.860', '2.430', '7.430']);
  });

  test('used cost goes by the smallest pack, rounded once, and leaves stock out of it', () => {
    const [clay] = listed([need('M01', 16.837)], new Map([['M01', 7]])).needs;
    expect(clay).toEqual({
      material: 'M01',
      label: 'expanded clay 8-16 mm',
      group: 'media',
      sale: 'packs',
      keeps: true,
      supplier: 'hollin',
      used: 16.837,
      unit: 'L',
      onHand: 7,
      packs: [{ id: 'M01-10', amount: 10, count: 1, priceCoins: 980 }],
      costCoins: 1650,
      packsCoins: 980,
      leftOver: expect.closeTo(0.163, 9) as number,
      byGroup: [{ group: 'media', costCoins: 1650, packsCoins: 980 }],
      oldPrice: false,
    });
  });

  test('each line and column rounds for all its builds: 3 x 0.5 g of inoculant is 0.18, twice in two columns 0.36', () => {
    const columns = ['T03', 'T05'].map((column) => need('M26', 0.5, { column, count: 3 }));
    expect(listed(columns).totalCoins).toBe(36);
  });

  test('columns are rounded to packs together', () => {
    const columns = ['T03', 'T05', 'T07'].map((column) => need('M01', 3, { column }));
    expect(listed(columns).packsTotalCoins).toBe(980);
  });

  test('cut goods have no packs and cost the same on both bases; own goods too, and are not bought', () => {
    const list = listed([
      need('M25b', 0.249546, { group: 'cover' }),
      need('SP', 1, { group: 'microfauna' }),
      need('VAN', 36, { group: 'delivery', perJob: true }),
    ]);
    expect(list.needs.map((each) => [each.material, each.packs, each.costCoins, each.packsCoins])).toEqual([
      ['M25b', [], 1160, 1160],
      ['SP', [], 600, 600],
      ['VAN', [], 1620, 1620],
    ]);
    expect([list.suppliers.map((bill) => bill.supplier), list.landedCoins]).toEqual([['greavel'], 3380 + 1200]);
  });

  test('a need of nothing is left out, even of goods that have no price', () => {
    expect(listed([need('T99', 0), need('M01', 0)]).needs).toEqual([]);
  });

  test('one material for two groups is bought once and shared by what each used', () => {
    const list = listed([need('M15', 50), need('M15', 25, { line: 'lid_need', group: 'hardscape' })]);
    expect(list.needs[0]).toMatchObject({
      group: 'media',
      packsCoins: 520,
      byGroup: [
        { group: 'media', costCoins: 260, packsCoins: 347 },
        { group: 'hardscape', costCoins: 130, packsCoins: 173 },
      ],
    });
  });

  test('limited to some materials, totals and carriage are theirs alone', () => {
    const list = needsOf([...mix, need('M15', 161.24)], { prices: demoPrices, stock: NO_STOCK, materials: ['M15'] });
    expect(list.ok && [list.value.totalCoins, list.value.packsTotalCoins, list.value.landedCoins]).toEqual([
      838, 1040, 1640,
    ]);
  });

  test('a limit to a material that nobody sells is refused', () => {
    expect(needsOf(mix, { prices: demoPrices, stock: NO_STOCK, materials: ['M01', 'M99'] })).toEqual({
      ok: false,
      fault: { kind: 'unknown-material', material: 'M99' },
    });
  });

  test('a need of a material that nobody sells is listed without a cost, and the rest adds up', () => {
    const list = needsOf([...mix, need('M99', 2)], { prices: demoPrices, stock: NO_STOCK });
    const plain = needsOf(mix, { prices: demoPrices, stock: NO_STOCK });
    if (!list.ok || !plain.ok) throw new Error('no list');
    expect(list.value.needs.at(-1)).toMatchObject({
      material: 'M99',
      used: 2,
      packs: [],
      lacks: { kind: 'unknown-material' },
    });
    expect(list.value.missing).toEqual([{ what: 'price', of: 'M99', label: 'M99' }]);
    expect(list.value.totalCoins).toBe(plain.value.totalCoins);
  });

  test('carriage that more goods may make free is in no sum while a price is missing', () => {
    const list = needsOf([need('M15', 161.24), need('M99', 2)], { prices: demoPrices, stock: NO_STOCK });
    expect(list.ok && [list.value.packsTotalCoins, list.value.landedCoins]).toEqual([1040, 1040]);
  });
});

function listed(needs: readonly NeedAmount[], stock: Stock = NO_STOCK): NeedsList {
  const list = needsOf(needs, { prices: demoPrices, stock });
  if (!list.ok) throw new Error(JSON.stringify(list.fault));
  return list.value;
}

function said(packs: readonly { readonly count: number; readonly amount: number }[]): string {
  return packs.map((pack) => `${pack.count}x${pack.amount}`).join(' ');
}
