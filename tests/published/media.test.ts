import { describe, expect, test } from 'vitest';
import { toBase, unitOf } from '#shared-calc/quantity/unit.ts';
import { leafMassForCover } from '#shared-calc/trade/leaves/leaf-mass-for-cover.ts';
import { litterLife } from '#shared-calc/trade/leaves/litter-life.ts';
import { litterMass } from '#shared-calc/trade/leaves/litter-mass.ts';
import { wettingWater } from '#shared-calc/trade/water/wetting-water.ts';
import { demoRecords } from '#tests/demo-bench.ts';

/** Mass of a litre with its pores filled up to a share, in kg. */
function wetted(dry: number, share: number): number {
  return dry + Number(wettingWater.compute([1, 0, share]));
}

describe('container substrates, Int. J. Agronomy 2012, 978528, Table 1', () => {
  // Container capacity (vol %), bulk density (g/cm3), drained weight (g/L).
  test.each([
    ['pine bark', { water: 48, bulk: 0.18, drained: 660 }],
    ['sphagnum peat', { water: 87, bulk: 0.11, drained: 980 }],
    ['clean chip residual 0.48 cm', { water: 57, bulk: 0.22, drained: 790 }],
    ['clean chip residual 0.95 cm', { water: 42, bulk: 0.19, drained: 610 }],
  ])('%s, wetted as it drains, weighs its drained weight', (_, { water, bulk, drained }) => {
    expect(wetted(bulk, water / 100) * 1000).toBeCloseTo(drained, 6);
  });

  test('the soaked mix of the house lies between what bark holds (48 %) and the pores of peat (98 %)', () => {
    const soaked = demoRecords().line.get('H1.moisture_full');
    expect([soaked?.least, soaked?.most].map((end = 0) => end >= 48 && end <= 98)).toEqual([true, true]);
  });
});

describe('sand, Moene and van Dam, Table 2.2 after de Vries 1963', () => {
  test('1600 kg/m3 dry with a pore fraction of 0.4 are 2000 kg/m3 saturated', () => {
    expect(wetted(1.6, 0.4) * 1000).toBeCloseTo(2000, 6);
  });
});

describe('leaf litter, Ottmar and Andreu 2007', () => {
  const acre = toBase(43_560, unitOf('ft2'));
  const inch = 25.4;
  const shortTon = toBase(2000, unitOf('lb')) * 1000;

  // 1 short ton/acre/inch is 8.8256 kg/m3; computed there, within 0.1 %.
  test.each([
    ['hardwood litter', 1.38, 12.18],
    ['all types, mean', 1.91, 16.86],
    ['all types, least', 0.95, 8.38],
    ['all types, most', 3.29, 29.04],
    ['hardwood duff', 4.84, 42.7],
    ['one ton', 1, 8.8256],
  ])('%s: %d short tons on an acre, an inch deep, are %d g/L', (_, tons, density) => {
    expect(Math.abs(Number(litterMass.compute([acre, inch, density])) / shortTon / tons - 1)).toBeLessThan(0.001);
  });

  test('99 % cover of oak (80 g/m2, BioNumbers 107171) weighs what 30 mm of hardwood litter does', () => {
    const cover = Number(leafMassForCover.compute([1, 0.99, 80]));
    const layer = Number(litterMass.compute([1, 30, 12.2]));
    expect(Math.abs(cover / layer - 1)).toBeLessThan(0.01);
  });
});

describe('decay, Olson 1963, with k of Melillo, Aber and Muratore 1982, Ecology 63:621', () => {
  const years = (now: number, least: number, k: number) => Number(litterLife.compute([now, least, k])) / 365;

  test.each([
    ['the fastest hardwood', 0.47, 0.625, 1.47],
    ['the slowest', 0.08, 0.923, 8.66],
  ])('%s, k %d: %d is left after a year, half after %d', (_, k, left, half) => {
    // `left` is printed to three digits: a year within what the last one leaves open.
    expect(Math.abs(years(1, left, k) - 1)).toBeLessThan(0.0005 / left / k);
    expect(years(2, 1, k)).toBeCloseTo(half, 2);
  });

  test('half is gone after ln 2 / k, and 95 % after 3 / k', () => {
    expect(years(2, 1, 0.47)).toBeCloseTo(Math.LN2 / 0.47, 12);
    expect(years(1, 0.05, 0.47) / (3 / 0.47)).toBeCloseTo(1, 2);
    expect(years(1, Math.exp(-3), 0.08)).toBeCloseTo(3 / 0.08, 9);
  });
});
