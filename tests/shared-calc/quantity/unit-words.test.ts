import { describe, expect, test } from 'vitest';
import { unitWords } from '#shared-calc/quantity/unit-words.ts';

describe('unitWords', () => {
  test.each([
    ['mm', 'mm'],
    ['m2', 'm²'],
    ['degC', '°C'],
    ['each/m2', 'each/m²'],
    ['umol/m2/s', 'µmol/m²/s'],
    ['money', 'cr'],
    ['money/kg', 'cr/kg'],
    ['%', '%'],
    ['fl_oz', 'fl oz'],
    ['choice', ''],
    ['yes_no', ''],
    ['number', ''],
    ['mol/m2/d', 'mol/m²/d'],
    ['W/m2/K', 'W/m²/K'],
  ])('%s is shown as "%s"', (unit, shown) => {
    expect(unitWords(unit, 'cr')).toBe(shown);
  });
});
