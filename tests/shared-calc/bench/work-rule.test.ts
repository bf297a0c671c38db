import { describe, expect, test } from 'vitest';
import { workRule } from '#shared-calc/bench/work-rule.ts';
import { fromBase, unitOf } from '#shared-calc/quantity/unit.ts';

function worked(text: string): string {
  const found = workRule(text);
  if (!found.ok) return found.fault.kind;
  const { value, unit, kindName } = found.value;
  const figure = typeof value === 'number' ? Number(fromBase(value, unitOf(unit)).toPrecision(12)) : value;
  return `${figure} ${unit}, ${kindName}`;
}

describe('workRule', () => {
  test.each([
    ['1/2 in', '12.7 mm, length'],
    ['1 1/2 in', '38.1 mm, length'],
    ['1/2', '0.5 number, number'],
    ['1 250 mm', '1250 mm, length'],
    ['12 g/L', '12 g/L, density'],
    ['12 %', '12 %, share'],
    ['-40 degF', '-40 degC, temperature'],
    ['9 F deg', '5 K, temperature step'],
    ['1e300 ft3', '2.8316846592e+301 L, volume'],
    ['2e300 ft3 / 1e300 ft3', '2 number, number'],
  ])('%s is read as a cell reads it: %s', (text, told) => {
    expect(worked(text)).toBe(told);
  });

  test.each([
    ['1 in / 2', '12.7 mm, length'],
    ['max(1; 5; 2)', '5 number, number'],
    ['73.4 degF + 9 F deg', '28 degC, temperature'],
    ['-2 ^ 2', '4 number, number'],
  ])('%s is worked as a rule: %s', (text, told) => {
    expect(worked(text)).toBe(told);
  });

  test.each([
    ['1,250', 'number'],
    ['0,900 m', 'number'],
    ['1e308 km', 'rule'],
    ['max(1e308 km)', 'rule'],
    ['1 in / 0', 'no answer'],
  ])('%s is refused: %s', (text, kind) => {
    expect(worked(text)).toBe(kind);
  });
});
