import { describe, expect, test } from 'vitest';
import { asPrinted, twoWays, type Way } from './two-ways.ts';

const order = { sizes: ['T07'], set: { soil_rise: '0 mm', screen_under_lamps: 'yes' } };

async function told({ bench }: Pick<Way, 'bench'>) {
  const { figures = {}, checks = {} } = (await bench(order))['T07'] ?? {};
  return { figures, checks };
}

describe.each(twoWays())('will it stand there? T07, full kit, screen under the lamps, by $way', ({ bench, work }) => {
  test('each part weighs what the sum on paper says', async () => {
    const printed = {
      tank_mass: '30.218',
      drainage_mass: '8.010',
      capping_mass: '4.316',
      soil_placed: '33.705',
      mix_dry: '0.173360',
      soil_mass: '19.325',
      litter_wet: '0.421',
      water_mass: '4.806',
      branches_need: '3',
      hardscape_mass: '3.250',
      panel_area: '0.54',
      panel_mass: '2.100',
      plants: '23',
      plant_mass: '1.380',
      cover_mass: '3.737',
      lamps: '3',
      lamps_mass: '3.600',
      top_mass: '2.000',
      filled_mass: '83.16',
    };
    expect(asPrinted((await told({ bench })).figures, printed)).toEqual(printed);
  });

  test('the mix: 0.13425 dry, 0.152557 loose, 0.173360 placed, 0.573360 as wet as it stands', async () => {
    const parts = '(3 * 0.08 kg/L + 3 * 0.2 kg/L + 2 * 0.12 kg/L + 0.25 kg/L + 0.0125 kg/L) / 10';
    const printed = { dry: '0.13425', loose: '0.152557', placed: '0.173360', wet: '0.573360' };
    const worked = {
      dry: await work(parts),
      loose: await work(`${parts} / 0.88`),
      placed: await work(`${parts} / 0.88 / 0.88`),
      wet: await work(`${parts} / 0.88 / 0.88 + 40 % * 1 kg/L`),
    };
    expect(asPrinted(worked, printed)).toEqual(printed);
    expect(await work('layer_volume(0.4005 m2, 30 mm)')).toBeCloseTo(12.015, 12);
  });

  test('it presses 1.957 kN on the square metre of its 912 x 457 footprint', async () => {
    const printed = { outside_length: '912', outside_depth: '457', footprint: '0.416784', shelf_load: '1.957' };
    expect(asPrinted((await told({ bench })).figures, printed)).toEqual(printed);
  });

  test('the shelf fails by 3.16 kg', async () => {
    const { figures, checks } = await told({ bench });
    const share = (Number(figures['shelf_rating']) * Number(figures['shelf_share'])) / 100;
    const over = { share, over: Number(figures['filled_mass']) - share };
    const printed = { share: '80.00', over: '3.16' };
    expect([asPrinted(over, printed), checks['shelf_holds']]).toEqual([printed, false]);
  });

  test('empty it takes two people, filled nobody lifts it', async () => {
    const { figures, checks } = await told({ bench });
    const empty = asPrinted({ empty: Number(figures['tank_mass']) + Number(figures['top_mass']) }, { empty: '32.2' });
    expect([empty['empty'], figures['crew_empty'], figures['crew_filled']]).toEqual(['32.2', 2, 0]);
    expect([checks['lift_empty'], checks['lift_filled']]).toEqual([true, false]);
  });
});
