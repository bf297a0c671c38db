import { describe, expect, test } from 'vitest';
import { comparedRules } from '#tests/shared-calc/engine/compared-rules.ts';

describe('workOnce', () => {
  test('10,000 random rules that read one another come to the same by either engine', () => {
    const { apart, sorts } = comparedRules(200);
    expect(apart.slice(0, 5)).toEqual([]);
    const all = ['number', 'boolean', 'missing', 'refused', 'divided by zero', 'no number'];
    expect([...sorts]).toEqual(expect.arrayContaining(all));
  });
});
