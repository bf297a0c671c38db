import { belowZero, notAboveZero } from '#shared-calc/trade/refuse-figure.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';

const GRAVITY = 9.80665; // m/s2

/** kPa (kN/m2) under a mass that is spread evenly on an area. */
export const floorPressure = tradeFunction({
  name: 'floor_pressure',
  title: 'Floor pressure',
  group: 'mass',
  args: [
    { name: 'mass', takes: 'kg', low: 0, high: 1000, says: 'filled' },
    { name: 'area', takes: 'm2', low: 0.02, high: 3, says: 'what stands on the shelf' },
  ],
  gives: 'kPa',
  sum: 'mass x 9.80665 / 1000 / area',
  help: 'Load on the shelf; 1 kPa is 1 kN/m2.',
  examples: [
    { rule: 'floor_pressure(83.16 kg, 0.416784 m2)', gives: '1.957 kPa' },
    { rule: 'floor_pressure(195.3 kg, 1 m2)', gives: '1.915 kPa' },
  ],
  source: 'standard gravity; the second is 40 psf of IRC Table R301.5',
  cautions: ['floorVerdict', 'buildingLoad'],
  compute: ({ mass, area }) =>
    belowZero({ Mass: mass }) ?? notAboveZero({ Area: area }) ?? (mass * GRAVITY) / 1000 / area,
});
