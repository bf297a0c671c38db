import { describe, expect, test } from 'vitest';
import { crushesPlants } from '#shared-calc/jobs/crushes-plants.ts';

describe('crushesPlants', () => {
  // Common practice, no source.
  test.each([
    ['Small frogs, one kind', false],
    ['One crested gecko', true],
    ['Two digging toads', true],
    ['', false],
  ])('%s: %s', (animals, crushes) => {
    expect(crushesPlants(animals)).toBe(crushes);
  });
});
