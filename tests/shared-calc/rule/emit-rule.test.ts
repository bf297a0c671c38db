import { describe, expect, test } from 'vitest';
import { emitRule } from '#shared-calc/rule/emit-rule.ts';
import { readRule } from '#shared-calc/rule/read-rule.ts';
import { smallEngine } from './small-engine.ts';

function emit(text: string): string {
  const rule = readRule(text);
  if (!rule.ok) throw new Error(JSON.stringify(rule.fault));
  return emitRule(rule.value, (name) => name.toUpperCase());
}

describe('emitRule', () => {
  test.each([
    ['40 mm', '0.04'],
    ['12 %', '0.12'],
    ['212 degF', '100'],
    ['-40 degF', '(-40)'],
    ['1e-9', '1e-9'],
    ['1 umol', '0.000001'],
    ['0.0001 mL', '1e-10'],
    ['"full"', '"full"'],
    ['"a""b\\"', '("a"&CHAR(34)&"b"&CHAR(92)&"")'],
    ['yes', 'TRUE()'],
    ['no', 'FALSE()'],
    ['a - (b - c)', 'A-(B-C)'],
    ['(a - b) - c', 'A-B-C'],
    ['a + b * c', 'A+B*C'],
    ['(a + b) * c', '(A+B)*C'],
    ['a / (b / c)', 'A/(B/C)'],
    ['a - -b', 'A-(-B)'],
    ['-(a + b)', '-(A+B)'],
    ['-(-a)', '-(-A)'],
    ['((a))', 'A'],
    ['a * -b', 'A*(-B)'],
    ['(a * b) / c', 'A*B/C'],
    ['a ^ b ^ c', 'LW_POWER(LW_POWER(A,B),C)'],
    ['a = b', 'LW_SAME(A,B)'],
    ['a <> b', 'LW_DIFFERS(A,B)'],
    ['a < b', 'LW_LESS(A,B)'],
    ['a <= b', 'LW_AT_MOST(A,B)'],
    ['a > b', 'LW_MORE(A,B)'],
    ['a >= b + c', 'LW_AT_LEAST(A,B+C)'],
    ['if(and(a, not(b)), c, or(a, b))', 'IF(AND(A,NOT(B)),C,OR(A,B))'],
    ['round_to(abs(a), pi())', 'LW_ROUND_TO(ABS(A),3.141592653589793)'],
    ['layer_volume(a, 40 mm)', 'LW_LAYER_VOLUME(A,0.04)'],
    ['sqrt(max(a, sum(b, c)))', 'LW_SQRT(MAX(A,SUM(B,C)))'],
    ['pick(a, "x", 1, "y", 2)', 'IF(LW_SAME(A,"x"),1,IF(LW_SAME(A,"y"),2,LW_NO_PICK()))'],
  ])('writes %s as %s', (text, formula) => {
    expect(emit(text)).toBe(formula);
  });

  const deep = (open: string, close = ')') => open.repeat(60) + '1' + close.repeat(60);

  test.each([
    ['brackets in brackets', deep('(1+2*'), 'number'],
    ['sums in products', deep('2*(1+'), 'number'],
    ['calls', deep('max(2,'), 'number'],
    ['powers', '1' + '^1'.repeat(60), 'number'],
    ['choices of pick', `pick("z",${Array.from({ length: 58 }, (_, at) => `"${at}",1`).join(',')},"z",1)`, 'number'],
    ['prefixes', '-'.repeat(60) + '1', 'number'],
    ['conditions', deep('if(yes,', ',0)'), 'number'],
    ['1,000 added figures', '1+'.repeat(999) + '1', 'number'],
    ['1,000 multiplied figures', '1*'.repeat(999) + '1', 'number'],
    ['660 figures in one call', `sum(${'12,'.repeat(660)}1)`, 'number'],
  ])('stays within what the engine can read: %s', (_, text, sort) => {
    const engine = smallEngine([]);
    expect(typeof engine.calculateFormula(`=${emit(text)}`, 0)).toBe(sort);
  });

  test('text comes through the engine letter by letter', () => {
    const engine = smallEngine([]);
    const words = 'he said "no" \\ \u00e9 100 % =1+1';
    const rule = { part: 'text', text: words, from: 0, to: 0 } as const;
    expect(engine.calculateFormula(`=${emitRule(rule, String)}`, 0)).toBe(words);
  });
});
