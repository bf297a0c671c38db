import { describe, expect, test } from 'vitest';
import { nearestName } from '#shared-calc/rule/nearest.ts';

const names = ['dam_height', 'drainage', 'drain_gap', 'kit', 'litter', 'soil_rise', 'mm'];

describe('nearestName', () => {
  test.each([
    ['dam_hieght', 'dam_height'],
    ['drainge', 'drainage'],
    ['Drainage', 'drainage'],
    ['DAM_HEIGHT', 'dam_height'],
    ['drain_gab', 'drain_gap'],
    ['kti', 'kit'],
    ['liter', 'litter'],
    ['soilrise', 'soil_rise'],
    ['mn', 'mm'],
    ['x', undefined],
    ['', undefined],
    ['kitchen', undefined],
    ['water', undefined],
  ])('for %s offers %s', (typed, near) => {
    expect(nearestName(typed, names)).toBe(near);
  });

  test('counts two letters swapped as one slip', () => {
    expect(nearestName('abdc', ['abxx', 'abcd'])).toBe('abcd');
  });
});
