import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { onceBench } from '#shared-calc/bench/once-bench.ts';
import type { Bench } from '#shared-calc/bench/open-bench.ts';
import { vapourInAir } from '#shared-calc/trade/air-and-light/vapour-in-air.ts';
import { demoOnce, demoRecords } from '#tests/demo-bench.ts';

/* Laws of a tank's air, water and heat over random columns of every shape. */

const records = demoRecords();
const tanks = [...records.tank.keys()];
const between = (least: number, most: number) => fc.double({ min: least, max: most, noNaN: true });
const anyColumn = fc.record({
  tank: fc.constantFrom(...tanks),
  kit: fc.constantFrom('basic', 'full', 'show'),
  cover_vent: between(0, 150),
  room_winter: between(17, 25),
  humidity_winter: between(25, 65),
  litter: between(10, 80),
  mist_cycles: fc.integer({ min: 0, max: 8 }),
  lamp_heat_share: between(20, 50),
});
type Column = typeof anyColumn extends fc.Arbitrary<infer C> ? C : never;
const units: Readonly<Record<string, string>> = {
  cover_vent: ' mm',
  room_winter: ' degC',
  humidity_winter: ' %',
  litter: ' mm',
  mist_cycles: ' each/d',
  lamp_heat_share: ' %',
};

interface Worked {
  readonly bench: Bench;
  readonly of: (line: string) => number;
}

function worked({ tank, ...figures }: Column, more: Readonly<Record<string, string>> = {}): Worked {
  const job = Object.fromEntries(Object.entries(figures).map(([line, text]) => [line, `${text}${units[line] ?? ''}`]));
  const house = demoOnce({ sizes: [tank], job: { ...job, ...more } }, records).input();
  const bench = onceBench(house);
  return { bench, of: (line) => Number(bench.box(tank, line).value) };
}

/** More in tests/long. */
const runs = { numRuns: fc.readConfigureGlobal().numRuns ?? 8 };
const HAIR = 1e-9;

describe('laws of the tank', () => {
  test('a wider strip or a larger air factor brings no less air and vapour, and no more humidity; the heat stays', () => {
    fc.assert(
      fc.property(anyColumn, between(1, 3), (column, times) => {
        const before = worked(column);
        for (const more of [{ cover_vent: `${column.cover_vent * times} mm` }, { air_factor: String(times) }]) {
          const after = worked(column, more);
          expect(after.of('air_flow')).toBeGreaterThanOrEqual(before.of('air_flow') - HAIR);
          expect(after.of('vapour_winter')).toBeGreaterThanOrEqual(before.of('vapour_winter') * (1 - HAIR) - HAIR);
          expect(after.of('tank_humidity')).toBeLessThanOrEqual(before.of('tank_humidity') + HAIR);
          expect(after.of('humidity_lowest')).toBeLessThanOrEqual(before.of('humidity_lowest') + HAIR);
          expect(after.of('hottest_day')).toBe(before.of('hottest_day'));
        }
      }),
      runs,
    );
  });

  test('more leaf makes a tank damper, thicker litter drier at its driest; one misting more leaves the driest hour', () => {
    fc.assert(
      fc.property(anyColumn, between(1, 3), (column, times) => {
        const before = worked(column);
        const [leafy, deep, misted] = [
          worked(column, { leaf_each: `${200 * times} cm2` }),
          worked(column, { litter: `${column.litter * times} mm` }),
          worked(column, { mist_cycles: `${column.mist_cycles + 1} each/d` }),
        ];
        expect(leafy.of('tank_humidity')).toBeGreaterThanOrEqual(before.of('tank_humidity') - HAIR);
        expect(leafy.of('humidity_lowest')).toBeGreaterThanOrEqual(before.of('humidity_lowest') - HAIR);
        expect(deep.of('humidity_lowest')).toBeLessThanOrEqual(before.of('humidity_lowest') + HAIR);
        expect(deep.of('litter_days')).toBeGreaterThanOrEqual(before.of('litter_days'));
        expect(misted.of('tank_humidity')).toBeGreaterThanOrEqual(before.of('tank_humidity') - HAIR);
        expect(misted.of('humidity_lowest')).toBe(before.of('humidity_lowest'));
      }),
      runs,
    );
  });

  test('humidity lies between the vapour of the room and full air, and what leaves as vapour is what the air carries out', () => {
    fc.assert(
      fc.property(anyColumn, (column) => {
        const { of } = worked(column);
        const room = Number(vapourInAir.compute([column.room_winter, column.humidity_winter / 100]));
        const inside = Number(vapourInAir.compute([of('tank_air'), of('tank_humidity')]));
        expect(inside).toBeGreaterThanOrEqual(room - HAIR);
        expect(of('tank_humidity')).toBeLessThanOrEqual(1);
        const carried = of('air_flow') * 3600 * 24 * (inside - room);
        expect((of('vapour_winter') * 86_400 * 1e6) / carried).toBeCloseTo(1, 9);
      }),
      runs,
    );
  });

  test('warmer lamps and less open glass make the hottest day hotter; no figure of need, work or money hangs on a guess', () => {
    fc.assert(
      fc.property(anyColumn, between(1.01, 3), (column, times) => {
        const before = worked(column);
        const after = worked(column, { warm_factor: String(times) });
        expect(after.of('hottest_day')).toBeGreaterThan(before.of('hottest_day'));
        const ranged = before.bench
          .input()
          .lines.filter(({ role }) => role === 'need' || role === 'work')
          .filter(({ name }) => before.bench.box(column.tank, name).range !== undefined);
        expect(ranged).toEqual([]);
      }),
      runs,
    );
  });

  test('every range holds its likely figure, and a check that holds, holds at every probe', () => {
    fc.assert(
      fc.property(anyColumn, (column) => {
        const { bench } = worked(column);
        const boxes = bench.input().lines.map(({ name }) => bench.box(column.tank, name));
        const outside = boxes.filter(
          ({ value, range }) => typeof range === 'object' && (range.from > Number(value) || range.to < Number(value)),
        );
        const spoilt = boxes.filter(
          ({ check }) => (check?.state === 'may not hold') !== (check?.badIn.length ?? 0) > 0,
        );
        expect([outside, spoilt]).toEqual([[], []]);
      }),
      runs,
    );
  });

  test('blocked, a tank weighs no less than filled; soil stays below the lip where it has the room', () => {
    fc.assert(
      fc.property(anyColumn, (column) => {
        const { of } = worked(column);
        expect(of('worst_mass')).toBeGreaterThanOrEqual(of('filled_mass'));
        const [front, settle] = [of('soil_front'), of('mix_settle')];
        expect(of('soil_later') < 1e-12).toBe(of('freeboard') >= (front * settle) / (1 - settle) - 1e-12);
      }),
      runs,
    );
  });

  test('a taller vent under the doors brings no less air and no more humidity', () => {
    fc.assert(
      fc.property(anyColumn, between(0, 20), between(0, 20), (column, low, more) => {
        const [before, after] = [low, low + more].map((vent) => worked(column, { front_vent: `${vent} mm` }));
        expect(after?.of('air_flow')).toBeGreaterThanOrEqual((before?.of('air_flow') ?? 0) - HAIR);
        expect(after?.of('tank_humidity')).toBeLessThanOrEqual((before?.of('tank_humidity') ?? 0) + HAIR);
        expect(after?.of('humidity_lowest')).toBeLessThanOrEqual((before?.of('humidity_lowest') ?? 0) + HAIR);
      }),
      runs,
    );
  });

  test('a damper room takes no more vapour and leaves the tank no drier', () => {
    fc.assert(
      fc.property(anyColumn, between(0, 20), (column, more) => {
        const before = worked(column);
        const after = worked({ ...column, humidity_winter: column.humidity_winter + more });
        expect(after.of('vapour_winter')).toBeLessThanOrEqual(before.of('vapour_winter') * (1 + 1e-6) + HAIR);
        expect(after.of('tank_humidity')).toBeGreaterThanOrEqual(before.of('tank_humidity') - HAIR);
        expect(after.of('humidity_lowest')).toBeGreaterThanOrEqual(before.of('humidity_lowest') - HAIR);
      }),
      runs,
    );
  });

  test('sun and a background make the hottest day hotter; thicker litter asks for more leaves', () => {
    fc.assert(
      fc.property(anyColumn, between(1.01, 3), (column, times) => {
        const before = worked(column);
        expect(worked(column, { sun_area: '0.1 m2' }).of('hottest_day')).toBeGreaterThan(before.of('hottest_day'));
        const narrow = worked(column, { panel_width: `${before.of('panel_width') + 0.05} m` });
        expect(narrow.of('hottest_day')).toBeGreaterThan(before.of('hottest_day'));
        const deep = worked(column, { litter: `${column.litter * times} mm` });
        expect(deep.of('leaves_yearly')).toBeGreaterThan(before.of('leaves_yearly'));
        expect(deep.of('worst_mass')).toBeGreaterThan(before.of('worst_mass'));
      }),
      runs,
    );
  });

  test('humidity does not jump where the glass begins to fog', () => {
    fc.assert(
      fc.property(anyColumn, between(0.05, 3), (column, damp) => {
        const [before, after] = [damp, damp * (1 + 1e-6)].map((each) => worked(column, { damp_factor: String(each) }));
        for (const line of ['tank_humidity', 'humidity_lowest']) {
          expect(Math.abs((after?.of(line) ?? 0) - (before?.of(line) ?? 0))).toBeLessThan(1e-5);
        }
      }),
      runs,
    );
  });

  test('a guess known better never widens a range, and moves no need, work or likely figure', () => {
    fc.assert(
      fc.property(anyColumn, between(0, 1), (column, part) => {
        const likely = worked(column);
        const closer = `1 (${1 - 0.5 * part} to ${1 + part})`;
        const narrow = worked(column, { air_factor: closer });
        for (const { name } of likely.bench.input().lines) {
          const [wide, tight] = [likely, narrow].map(({ bench }) => bench.box(column.tank, name));
          expect(tight?.value).toEqual(wide?.value);
          if (typeof tight?.range !== 'object') continue;
          const range = typeof wide?.range === 'object' ? wide.range : { from: Infinity, to: -Infinity };
          const hair = HAIR * Math.abs(range.to - range.from);
          expect([name, tight.range.from >= range.from - hair, tight.range.to <= range.to + hair]).toEqual([
            name,
            true,
            true,
          ]);
        }
      }),
      runs,
    );
  });
});
