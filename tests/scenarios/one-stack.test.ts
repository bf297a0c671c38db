import { describe, expect, test } from 'vitest';
import { asPrinted, twoWays } from './two-ways.ts';

const order = { sizes: ['T07'], set: { soil_rise: '0 mm' } };

describe.each(twoWays())('one stack, T07 with H1 and no slope, by $way', ({ bench, needs, work }) => {
  test('the layers fill the dam: 40 + 10 + 90 + 10 = 150 mm', async () => {
    const printed = {
      dam_height: '150',
      drainage: '40',
      capping: '10',
      freeboard: '10',
      soil_front: '90',
      floor_area: '0.4005',
      perimeter: '2.690',
    };
    expect(asPrinted((await bench(order))['T07']?.figures ?? {}, printed)).toEqual(printed);
    expect(await work('0.27 * 150 mm')).toBe(40.5);
  });

  test('drainage and capping as placed, and loose as bought', async () => {
    const printed = {
      drainage_placed: '16.020',
      drainage_need: '16.837',
      edge_bead: '0.538',
      capping_placed: '4.543',
      capping_need: '4.824',
    };
    expect(asPrinted((await bench(order))['T07']?.figures ?? {}, printed)).toEqual(printed);
    expect(await work('layer_volume(0.4005 m2, 10 mm)')).toBe(4.005);
  });

  test('the soil less its clay edge and what is buried, then loose, then the parts that go in', async () => {
    const printed = {
      soil_gross: '36.045',
      edge_bead: '0.538',
      soil_buried: '1.802',
      soil_placed: '33.705',
      mix_loose: '40.216',
      mix_inputs: '45.700',
    };
    expect(asPrinted((await bench(order))['T07']?.figures ?? {}, printed)).toEqual(printed);
  });

  test('the mesh is cut 960 x 505, and the litter stands 20 mm over the dam', async () => {
    const printed = {
      mesh_length: '960',
      mesh_depth: '505',
      litter_dry: '146.58',
      leaves_need: '161.24',
      litter_over_dam: '20',
    };
    expect(asPrinted((await bench(order))['T07']?.figures ?? {}, printed)).toEqual(printed);
  });

  test('in packs alone: clay 2 x 10 L for 19.60, capping 1 x 6 L for 7.20', async () => {
    const list = (await needs(order)).needs;
    expect(['M01', 'M04'].map((material) => [list[material]?.packs, list[material]?.packsCost])).toEqual([
      ['2x10', '19.60'],
      ['1x6', '7.20'],
    ]);
  });
});
