import { describe, expect, test } from 'vitest';
import { drainCapacity } from '#shared-calc/trade/water/drain-capacity.ts';
import { drainFillDays } from '#shared-calc/trade/water/drain-fill-days.ts';
import { mistDaily } from '#shared-calc/trade/water/mist-daily.ts';
import { reservoirDays } from '#shared-calc/trade/water/reservoir-days.ts';
import { wettingWater } from '#shared-calc/trade/water/wetting-water.ts';

describe('wettingWater', () => {
  test('33.705 L from 12 to 40 % takes 9.437 L', () => {
    expect(wettingWater.compute([33.705, 0.12, 0.4])).toBeCloseTo(9.437, 3);
    expect(wettingWater.warn?.([33.705, 0.12, 0.4], 9.437)).toBeUndefined();
  });

  test('mix that is already as wet as the target has no water to take', () => {
    const says = { refused: 'Mix is already wetter than the target; let it drain.' };
    expect([wettingWater.compute([10, 0.5, 0.25]), wettingWater.compute([10, 0.4, 0.4])]).toEqual([says, says]);
  });

  test('over 60 % is swamp', () => {
    expect(wettingWater.warn?.([10, 0.12, 0.61], 4.9)).toBe('That is swamp, not damp.');
    expect(wettingWater.warn?.([10, 0.12, 0.6], 4.8)).toBeUndefined();
  });

  test.each([
    [[-1, 0.1, 0.4], 'Placed litres cannot be below zero.'],
    [[10, -0.1, 0.4], 'Start moisture cannot be below zero.'],
    [[10, 0.1, -0.4], 'Target moisture cannot be below zero.'],
  ])('%j is refused', (args, says) => {
    expect(wettingWater.compute(args)).toEqual({ refused: says });
  });
});

describe('drainCapacity', () => {
  // Worked by hand from the sum; void 0.40 of even grains is common practice, no source.
  test('0.4005 m2, 40 mm of drainage, 10 mm gap, void 0.40: 4.806 L', () => {
    expect(drainCapacity.compute([0.4005, 40, 10, 0.4])).toBeCloseTo(4.806, 10);
  });

  test('a gap as deep as the layer leaves no room', () => {
    expect(drainCapacity.compute([0.4005, 40, 40, 0.4])).toBe(0);
    expect(drainCapacity.compute([0.4005, 40, 50, 0.4])).toBe(0);
    expect(drainCapacity.warn?.([0.4005, 40, 50, 0.4], 0)).toBe(
      'The air gap of 50 mm is as deep as the drainage; nothing is left for water.',
    );
  });

  test.each([
    [[-0.4, 40, 10, 0.4], 'Area cannot be below zero.'],
    [[0.4, -40, 10, 0.4], 'Drainage cannot be below zero.'],
    [[0.4, 40, -10, 0.4], 'Air gap cannot be below zero.'],
    [[0.4, 40, 10, -0.4], 'Void cannot be below zero.'],
    [[0.4, 40, 10, 40], 'Void is a share; 40 % is 0.4.'],
  ])('%j is refused', (args, says) => {
    expect(drainCapacity.compute(args)).toEqual({ refused: says });
  });
});

describe('mistDaily', () => {
  // Flow by the root of the pressure: Bernoulli. 90 mL/min at 550 kPa from memory.
  test.each([
    [[2, 90, 550, 550, 15, 3], 135],
    [[2, 90, 550, 400, 15, 3], 115.13],
    [[0, 90, 550, 550, 15, 3], 0],
    [[2, 90, 550, 0, 15, 3], 0],
    [[2, 90, 550, 2200, 15, 3], 270],
  ])('nozzles, mL/min, rated, pump, seconds, cycles %j: %d mL a day', (args, mist) => {
    expect(mistDaily.compute(args)).toBeCloseTo(mist, 2);
  });

  test.each([
    [[-2, 90, 550, 550, 15, 3], 'Nozzles cannot be below zero.'],
    [[2, -90, 550, 550, 15, 3], 'Flow cannot be below zero.'],
    [[2, 90, 0, 550, 15, 3], 'Rated pressure must be more than zero.'],
    [[2, 90, 550, -550, 15, 3], 'Pump pressure cannot be below zero.'],
    [[2, 90, 550, 550, -15, 3], 'Mist time cannot be below zero.'],
    [[2, 90, 550, 550, 15, -3], 'Mist cycles cannot be below zero.'],
  ])('%j is refused', (args, says) => {
    expect(mistDaily.compute(args)).toEqual({ refused: says });
  });
});

describe('drainFillDays', () => {
  test.each([
    [[4.806, 135, 49.06], 55.9],
    [[4.806, 135, 31.36], 46.4],
    [[4.806, 100, -35], 35.6],
    [[0, 135, 49.06], 0],
  ])('room L, mist and loss mL a day %j: full after %d d', (args, days) => {
    expect(drainFillDays.compute(args)).toBeCloseTo(days, 1);
    expect(drainFillDays.warn?.(args, days)).toBeUndefined();
  });

  test.each([
    ['as much leaves as comes', [4.806, 49.06, 49.06]],
    ['more leaves than comes', [4.806, 40, 49.06]],
    ['it would take more than ten years', [4.806, 50, 49]],
  ])('where %s it does not fill', (_, args) => {
    expect(drainFillDays.compute(args)).toBe(3650);
    expect(drainFillDays.warn?.(args, 3650)).toBe('The drainage does not fill.');
  });

  test.each([
    [[-1, 135, 49], 'Capacity cannot be below zero.'],
    [[4.8, -135, 49], 'Mist cannot be below zero.'],
  ])('%j is refused', (args, says) => {
    expect(drainFillDays.compute(args)).toEqual({ refused: says });
  });
});

describe('reservoirDays', () => {
  // Worked by hand from the sum; cleaning every 14 days is common practice, no source.
  test.each([
    ['the cap for cleaning comes first', [9, 135, 14], 14],
    ['the can is empty first', [1, 135, 14], 7],
    ['whole days, rounded down', [9, 135, 90], 66],
    ['an even division is not rounded away', [0.405, 135, 14], 3],
    ['no mist: the cap', [9, 0, 14], 14],
  ])('%s', (_, args, days) => {
    expect(reservoirDays.compute(args)).toBe(days);
  });

  test.each([
    [[-9, 135, 14], 'Usable water cannot be below zero.'],
    [[9, -135, 14], 'Mist cannot be below zero.'],
    [[9, 135, -14], 'Cap cannot be below zero.'],
  ])('%j is refused', (args, says) => {
    expect(reservoirDays.compute(args)).toEqual({ refused: says });
  });
});
