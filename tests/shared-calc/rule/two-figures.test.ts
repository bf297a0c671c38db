import { describe, expect, test } from 'vitest';
import { readRule } from '#shared-calc/rule/read-rule.ts';
import { separated } from '#shared-calc/rule/separated.ts';
import { twoFigures } from '#shared-calc/rule/two-figures.ts';
import { sayRuleFault } from '#shared-calc/words/say-rule-fault.ts';
import { figureRule, seeded } from './random-rules.ts';

describe('twoFigures', () => {
  test.each([
    ['max(1,5, 2)', '1,5: 1.5, or two figures? Write 1.5 or 1; 5.'],
    ['sum(2, 1,5)', '1,5: 1.5, or two figures? Write 1.5 or 1; 5.'],
    ['round(2,5 mm)', '2,5: 2.5, or two figures? Write 2.5 or 2; 5.'],
    ['3 * (2 + max(a; 10,25))', '10,25: 10.25, or two figures? Write 10.25 or 10; 25.'],
    ['max(0.5,2)', '0.5,2: one figure, or two? Write 0.5; 2 for two.'],
  ])('%s', (rule, says) => {
    const fault = twoFigures(rule);
    expect(fault && sayRuleFault(fault, rule)).toBe(says);
  });

  test('the place is that of the figures alone', () => {
    expect(twoFigures('max(a; 10,25 mm)')).toMatchObject({ from: 7, to: 12 });
  });

  test.each(['max(1, 5)', 'max(1; 5)', 'max(a,5)', 'max(5,a)', 'max(5 mm,6 mm)', 'pick(kit; "1,5"; 2)', '1,5 + 2'])(
    '%s has one reading here',
    (rule) => {
      expect(twoFigures(rule)).toBeUndefined();
    },
  );
});

describe('separated', () => {
  test.each([
    ['max(1,2)', 'max(1; 2)'],
    ['max(1 , 2)', 'max(1 ; 2)'],
    ['if(a > 1, "x,y", sum(b,c))', 'if(a > 1; "x,y"; sum(b; c))'],
    ['a + b', 'a + b'],
    ['1,5', '1,5'],
  ])('%s is shown as %s', (rule, shown) => {
    expect(separated(rule)).toBe(shown);
  });

  test('a rule with ; is the rule with commas, and is shown as itself', () => {
    const parts = (text: string) => JSON.stringify(readRule(text)).replaceAll(/"(?:from|to)":\d+/g, '');
    const random = seeded(41_203);
    const rules = Array.from({ length: 500 }, () => figureRule(random, 4));
    expect(rules.filter((rule) => parts(separated(rule)) !== parts(rule))).toEqual([]);
    expect(rules.map(separated).filter((rule) => separated(rule) !== rule || twoFigures(rule))).toEqual([]);
  });
});
