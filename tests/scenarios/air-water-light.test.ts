import { describe, expect, test } from 'vitest';
import { asPrinted, twoWays, type Order, type Way } from './two-ways.ts';

/** A tank whose air, humidity and warming somebody has measured. */
const measured = {
  soil_rise: '0 mm',
  air_changes: '1 each/h',
  tank_air: '24 degC',
  tank_air_summer: '24 degC',
  tank_humidity: '90 %',
  tank_humidity_summer: '90 %',
  open_glass: '2.0145 m2',
  warm_factor: '1',
};
const open = { sizes: ['T07'], set: measured };
const screened = { sizes: ['T07'], set: { ...measured, screen_under_lamps: 'yes' } };

async function told({ bench }: Pick<Way, 'bench'>, order: Order) {
  const { figures = {}, checks = {} } = (await bench(order))['T07'] ?? {};
  const number = (name: string) => Number(figures[name]);
  return { figures, checks, number };
}

describe.each(twoWays())('air, water and light of T07, full kit, by $way', ({ bench, quote, work }) => {
  test('the room and the tank are those of the sum', async () => {
    const printed = {
      room_summer: '23',
      humidity_summer: '60',
      room_winter: '21',
      humidity_winter: '45',
      tank_air: '24',
      tank_humidity: '90',
    };
    expect(asPrinted((await told({ bench }, screened)).figures, printed)).toEqual(printed);
  });

  test('the cover is two panes of 447 x 418 with a strip of 5.6 % left open', async () => {
    const printed = {
      panes: '2',
      pane_length: '447',
      pane_depth: '418',
      cover_mass: '3.74',
      vent_share: '5.6',
    };
    expect(asPrinted((await told({ bench }, screened)).figures, printed)).toEqual(printed);
  });

  test('with the screen under them three lamps are wanted, and the tank comes within a degree of the ceiling', async () => {
    const { figures, checks, number } = await told({ bench }, screened);
    const printed = {
      lamp_power: '36',
      light_per_lamp: '2.241',
      light_target: '5',
      lamps: '3',
      light_warming_up: '3.75',
      hottest_day: '26.75',
      species_ceiling: '27',
    };
    expect(asPrinted(figures, printed)).toEqual(printed);
    const sums = {
      light: number('lamps') * number('light_per_lamp'),
      power: number('lamps') * number('lamp_power'),
      below: number('species_ceiling') - number('hottest_day'),
    };
    const printedSums = { light: '6.72', power: '108', below: '0.25' };
    expect(asPrinted(sums, printedSums)).toEqual(printedSums);
    expect([checks['cool_enough'], checks['cool_with_room']]).toEqual([true, false]);
  });

  test('without it two lamps do, and the summer is cool enough', async () => {
    const { figures, checks, number } = await told({ bench }, open);
    const printed = { lamps: '2', light_warming_up: '2.50', hottest_day: '25.50' };
    expect(asPrinted(figures, printed)).toEqual(printed);
    const sums = { light: number('lamps') * number('light_per_lamp'), power: number('lamps') * number('lamp_power') };
    const printedSums = { light: '5.98', power: '72' };
    expect(asPrinted(sums, printedSums)).toEqual(printedSums);
    expect([checks['cool_enough'], checks['cool_with_room']]).toEqual([true, true]);
  });

  test('the lamp saved is 49.00 of cost and 70.00 of price', async () => {
    const [with3, with2] = [(await quote(screened))['lamps'], (await quote(open))['lamps']];
    const saved = [0, 1].map((at) => (Number(with3?.[at]) - Number(with2?.[at])).toFixed(2));
    expect(saved).toEqual(['49.00', '70.00']);
  });

  test('mist and what leaves as vapour, winter and summer', async () => {
    const { figures, number } = await told({ bench }, screened);
    const printed = {
      nozzles: '2',
      mist_cycles: '3',
      mist_time: '15',
      mist: '135',
      air_changes: '1',
      air_volume: '0.180225',
      vapour_winter: '49.06',
      vapour_summer: '31.36',
    };
    expect(asPrinted(figures, printed)).toEqual(printed);
    const taken = {
      winter: number('mist') - number('vapour_winter'),
      summer: number('mist') - number('vapour_summer'),
    };
    const printedTaken = { winter: '85.94', summer: '103.64' };
    expect(asPrinted(taken, printedTaken)).toEqual(printedTaken);
  });

  test('the drainage fills in 55.9 days of winter, 46.4 of summer: let it out every 6 weeks', async () => {
    const { figures, number } = await told({ bench }, screened);
    const printed = { drain_room: '4.806', drain_days: '46.4' };
    expect(asPrinted(figures, printed)).toEqual(printed);
    const days = {
      winter: Number(await work('drain_fill_days(4.806 L, 135 mL/d, 49.06 mL/d)')) / 1440,
      summer: Number(await work('drain_fill_days(4.806 L, 135 mL/d, 31.36 mL/d)')) / 1440,
    };
    const printedDays = { winter: '55.9', summer: '46.4' };
    expect(asPrinted(days, printedDays)).toEqual(printedDays);
    expect(Math.floor(number('drain_days') / 7)).toBe(6);
  });

  test('the can lasts 66 days and is cleaned every 14; the soil takes 8.67 L to begin with', async () => {
    const { figures } = await told({ bench }, screened);
    const printed = { reservoir: '9', refill_days: '14', moisture_start: '12', wetting: '8.67' };
    expect(asPrinted(figures, printed)).toEqual(printed);
    expect(Math.floor(Number(await work('reservoir_days(9 L, 135 mL/d, 365 d)')) / 1440)).toBe(66);
  });
});

const asMade = { sizes: ['T07'], set: { soil_rise: '0 mm' } };

describe.each(twoWays())('T07 flat, full kit, with nothing measured, by $way', ({ bench }) => {
  test('its air, humidity and warming follow from its openings, plants, glass and lamps', async () => {
    // Open glass: walls above the dam, 2.69 m of perimeter less 0.9 m of cork, and the top.
    const printed = { open_glass: '1.2060', light_warming_up: '4.18', hottest_day: '27.18', tank_air: '23.09' };
    expect(asPrinted((await told({ bench }, asMade)).figures, printed)).toEqual(printed);
  });

  test('a wider strip lets in more air, dries the tank and takes more water; the heat stays', async () => {
    const strips = ['0 mm', '25 mm', '100 mm', '200 mm', '440 mm'];
    const by = await Promise.all(
      strips.map((strip) => told({ bench }, { ...asMade, set: { ...asMade.set, cover_vent: strip } })),
    );
    const rows = ['air_changes', 'tank_humidity', 'humidity_lowest', 'vapour_winter'].map((line) =>
      by.map(({ number }) => number(line)),
    );
    const [changes = [], mean = [], lowest = [], vapour = []] = rows;
    expect(changes).toEqual(changes.toSorted((one, other) => one - other));
    expect(vapour).toEqual(vapour.toSorted((one, other) => one - other));
    expect(mean).toEqual(mean.toSorted((one, other) => other - one));
    expect(lowest).toEqual(lowest.toSorted((one, other) => other - one));
    expect(new Set(by.map(({ number }) => number('hottest_day'))).size).toBe(1);
    expect(by.map(({ checks }) => checks['not_too_dry'])).toEqual([true, true, null, false, false]);
  });
});
