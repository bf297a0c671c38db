import { describe, expect, test } from 'vitest';
import { isRounded, packIn, readListPack } from '#shared-calc/read/list-pack.ts';

function read(pack: string, unit = ''): unknown {
  const done = readListPack(pack, unit, { sign: '.', isKnown: false });
  return done.ok ? [done.value.amount, done.value.unit] : done.fault.kind;
}

describe('readListPack', () => {
  test.each([
    ['12 gal', '', [12, 'gal']],
    ['12', 'GAL', [12, 'gal']],
    ['12gal', '', [12, 'gal']],
    ['2.5 kg', '', [2.5, 'kg']],
    ['1 1/2', 'gal', [1.5, 'gal']],
    ['10 x 1.5 L', '', [15, 'L']],
    ['10 × 1.5', 'LTR', [15, 'L']],
    ['10', '1.5 L', [15, 'L']],
    ['EA', '', [1, 'each']],
    ['', 'pcs', [1, 'each']],
    ['25', 'ea', [25, 'each']],
    ['1', 'pièce', [1, 'each']],
    ['12 gal', 'EA', [12, 'gal']],
    ['16', 'fl. oz', [16, 'fl_oz']],
    ['1', 'cu ft', [1, 'ft3']],
    ['1', 'm³', [1, 'm3']],
    ['12', '', [12, undefined]],
    ['1 000', 'g', [1000, 'g']],
    ['1,250', 'g', 'pack-number'],
    ['1 bag', '', 'pack-unknown-unit'],
    ['12 gal', 'L', 'pack-two-units'],
    ['0', 'L', 'pack-no-amount'],
    ['-5', 'L', 'pack-no-amount'],
    ['12 %', '', 'pack-unknown-unit'],
    ['', '', 'pack-empty'],
  ])('%j with %j is %j', (pack, unit, is) => {
    expect(read(pack, unit)).toEqual(is);
  });

  test('12 gal is 45.424941408 L to the last digit, and no pack of kilograms', () => {
    expect(packIn({ amount: 12, unit: 'gal' }, 'L')).toBe(45.424941408);
    expect(packIn({ amount: 12, unit: 'gal' }, 'kg')).toBeUndefined();
  });

  test.each([
    ['45.42', 'L', 45.424941408, true],
    ['11.9', 'gal', 45, true],
    ['12', 'gal', 45, false],
    ['0.5', 'L', 0.473, false],
    ['45.4', 'L', 45, false],
  ])('%s %s is a rounding of %s L: %s', (pack, unit, own, is) => {
    const done = readListPack(pack, unit, { sign: '.', isKnown: true });
    expect(done.ok && isRounded(done.value, own, 'L')).toBe(is);
  });
});
