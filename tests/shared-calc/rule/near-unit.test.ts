import { describe, expect, test } from 'vitest';
import { nearUnit } from '#shared-calc/rule/near-unit.ts';

describe('nearUnit', () => {
  test.each([
    ['C', 'degC'],
    ['litres', 'L'],
    ['Liter', 'L'],
    ['inches', 'in'],
    ['hours', 'h'],
    ['mins', 'min'],
    ['KG', 'kg'],
    ['degc', 'degC'],
    ['lbs', 'lb'],
    ['pcs', 'each'],
    ['mm22', 'mm2'],
    ['bucket', undefined],
  ])('takes %s for %s', (written, unit) => {
    expect(nearUnit(written)).toBe(unit);
  });
});
