import { describe, expect, test } from 'vitest';
import { asPrinted, twoWays } from './two-ways.ts';

const mix = ['M05', 'M06', 'M07', 'M08', 'M09'];
const order = { sizes: ['T07'], set: { soil_rise: '0 mm' }, materials: mix };
const stock = { M05: { amount: 6, unit: 'L' }, M08: { amount: 2, unit: 'L' } };

describe.each(twoWays())('the mix of one stack with 6 L coir and 2 L charcoal on hand, by $way', ({ needs }) => {
  test('each part needs its litres, whatever is on hand', async () => {
    const printed = { M05: '13.710', M06: '13.710', M07: '9.140', M08: '4.570', M09: '4.570' };
    for (const each of [order, { ...order, stock }]) {
      const list = (await needs(each)).needs;
      const used = Object.fromEntries(mix.map((material) => [material, list[material]?.used]));
      expect(asPrinted(used, printed)).toEqual(printed);
    }
  });

  test('what is bought, least cost of the packs on sale', async () => {
    const { needs: list } = await needs({ ...order, stock });
    expect(Object.entries(list).map(([material, { packs, packsCost }]) => [material, packs, packsCost])).toEqual([
      ['M05', '1x9', '4.60'],
      ['M06', '2x10', '17.80'],
      ['M07', '2x8', '27.00'],
      ['M08', '1x5', '7.40'],
      ['M09', '1x12', '9.20'],
    ]);
  });

  test('66.00 for the goods; below 90 the carriage is 7.50: 73.50 landed', async () => {
    const { packsTotal, landed } = await needs({ ...order, stock });
    expect([packsTotal, landed]).toEqual(['66.00', '73.50']);
  });

  test('what stands in the store after the build', async () => {
    const list = (await needs({ ...order, stock })).needs;
    const left = Object.fromEntries(mix.map((material) => [material, list[material]?.leftOver]));
    const printed = { M05: '1.290', M06: '6.290', M07: '6.860', M08: '2.430', M09: '7.430' };
    expect(asPrinted(left, printed)).toEqual(printed);
  });
});
