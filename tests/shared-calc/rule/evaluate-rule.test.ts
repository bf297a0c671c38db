import { describe, expect, test } from 'vitest';
import { compileRule, type Sum, type Value } from '#shared-calc/rule/evaluate-rule.ts';
import { readRule } from '#shared-calc/rule/read-rule.ts';

const lines: Readonly<Record<string, Value>> = {
  drainage: 0.04,
  floor_area: 0.4005,
  kit: 'full',
  client_tank: false,
  dam_height: { kind: 'missing', line: 'dam_height' },
};

const functions = new Map<string, Sum>([
  ['layer_volume', ([area, depth]) => Number(area) * Number(depth)],
  ['refuses', () => ({ refused: 'The bow is deeper than a half circle.' })],
]);

function work(text: string): Value {
  const rule = readRule(text);
  if (!rule.ok) throw new Error(JSON.stringify(rule.fault));
  return compileRule(rule.value, { valueOf: (name) => lines[name] ?? { kind: 'missing', line: name }, functions })();
}

describe('compileRule', () => {
  test.each([
    ['layer_volume(floor_area, drainage)', 0.4005 * 0.04],
    ['drainage + 5 mm', 0.045],
    ['2 + 3 * 4', 14],
    ['-2 ^ 2', 4],
    ['kit = "full"', true],
    ['not(client_tank)', true],
    ['pick(kit, "basic", 1, "full", 2)', 2],
    ['pi()', Math.PI],
    ['if(client_tank, dam_height, 1)', 1],
    ['pick(kit, "basic", dam_height, "full", 2, "show", 1 / 0)', 2],
    ['and(yes, no)', false],
    ['or(yes, no)', true],
    ['round_to(0.27 * 150 mm, 5 mm)', 0.04],
    ['"a"', 'a'],
  ] as const)('works %s', (text, value) => {
    expect(work(text)).toBe(value);
  });

  test.each([
    ['dam_height + 1 / 0', { kind: 'missing', line: 'dam_height' }],
    ['1 / 0', { kind: 'divided-by-zero' }],
    ['exp(1000)', { kind: 'not-a-number' }],
    ['1e200 * 1e200', { kind: 'not-a-number' }],
    ['1 + refuses()', { kind: 'refused', fn: 'refuses', says: 'The bow is deeper than a half circle.' }],
    ['pick(kit, "basic", 1)', { kind: 'refused', fn: 'pick', says: 'pick found none of its choices.' }],
    ['or(yes, dam_height > 0 mm)', { kind: 'missing', line: 'dam_height' }],
    ['if(dam_height > 0 mm, 1, 2)', { kind: 'missing', line: 'dam_height' }],
    ['kit + 1', { kind: 'not-a-number' }],
    ['-kit', { kind: 'not-a-number' }],
    ['unheard_of(1)', { kind: 'refused', fn: 'unheard_of', says: 'No such function.' }],
  ] as const)('tells what %s ran into', (text, problem) => {
    expect(work(text)).toEqual(problem);
  });
});
