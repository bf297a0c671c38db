import { DetailedCellError } from 'hyperformula';
import { describe, expect, test } from 'vitest';
import { checkRule } from '#shared-calc/rule/check-rule.ts';
import { emitRule } from '#shared-calc/rule/emit-rule.ts';
import { compileRule, type Value } from '#shared-calc/rule/evaluate-rule.ts';
import { readRule } from '#shared-calc/rule/read-rule.ts';
import type { Rule } from '#shared-calc/rule/tree.ts';
import { smallEngine } from '#tests/shared-calc/rule/small-engine.ts';
import { someScope } from '#tests/shared-calc/rule/some-scope.ts';

/*
 * OASIS Open Document Format 1.3, part 4 (OpenFormula), clauses as named. The standard prints no tables of
 * results: what is not marked "printed" follows from the words of the clause. Its argument sign ; is , here.
 * Not asserted: what the clause leaves to the program (text used as a number, 0 ^ 0), and what rules do not have
 * (text joined by &, ranges, empty boxes counted as 0, yes and no used as numbers).
 */

function read(text: string): Rule {
  const rule = readRule(text);
  if (!rule.ok) throw new Error(JSON.stringify(rule.fault));
  return rule.value;
}

const engine = smallEngine([]);

/** What both evaluators come to; `Error` where they refuse. */
function work(text: string): readonly (Value | string)[] {
  const rule = read(text);
  const ours = compileRule(rule, { valueOf: (line) => ({ kind: 'missing', line }), functions: new Map() })();
  const engines = engine.calculateFormula(`=${emitRule(rule, String)}`, 0);
  return [
    typeof ours === 'object' ? 'Error' : ours,
    engines instanceof DetailedCellError ? 'Error' : (engines as Value),
  ];
}

describe('OpenFormula', () => {
  test.each([
    ['5.5 note 3, printed', '2+3*4', 14],
    ['5.5 note 3, printed', '(2+3)*4', 20],
    ['5.5 table 1, printed', '2^3', 8],
    ['5.5 note 1, prefix above ^', '-2^2', 4],
    ['5.5 note 1, ^ from the left', '2^3^2', 64],
    ['5.5, % above ^', '10 %', 0.1],
    ['5.5, % above ^', '50 %^2', 0.25],
    ['5.5, % above ^', '200+10 %', 200.1],
    ['5.4, a quote is written twice', '"a""b" = "a""b"', true],
    ['6.17.5 ROUND, half away from zero', 'round(2.5)', 3],
    ['6.17.5 ROUND, half away from zero', 'round(-2.5)', -3],
    ['6.17.5 ROUND, half away from zero', 'round(1234.567, -2)', 1200],
    ['6.17.5 ROUND, half away from zero', 'round(0.125, 2)', 0.13],
    ['6.17.7 ROUNDUP, away from zero', 'roundup(1.45673, 2)', 1.46],
    ['6.17.7 ROUNDUP, away from zero', 'roundup(-1.1, 0)', -2],
    ['6.17.7 ROUNDUP, away from zero', 'roundup(9, -1)', 10],
    ['6.17.1 CEILING, one sign', 'ceiling(2, -3)', 'Error'],
    ['6.17.3 FLOOR', 'floor(-4.5, -3)', -6],
    ['6.17.3 FLOOR, mode', 'floor(-4.5, -3, 1)', -3],
    ['6.16.42 MOD, by other than 0', 'mod(10, 0)', 'Error'],
    ['6.16.42 MOD = A - B x INT(A/B)', 'mod(-10, 3)', 2],
    ['6.16.42 MOD = A - B x INT(A/B)', 'mod(10, -3)', -2],
    ['6.16.46 POWER', 'power(0, -1)', 'Error'],
    ['6.16.46 POWER and ^ are one', '0 ^ -1', 'Error'],
    // The number of this clause is from memory.
    ['6.15.4 IF works what it needs', 'if(no, 1 / 0, 12)', 12],
    ['6.15.4 IF works what it needs', 'if(yes, 1 / 0, 12)', 'Error'],
    ['6.3.7 an error among the figures is kept', 'sum(1, 1 / 0, 3)', 'Error'],
    ['6.3.7 an error among the figures is kept', 'max(1, 1 / 0)', 'Error'],
  ])('%s: %s is %s', (_, text, value) => {
    expect(work(text)).toEqual([value, value]);
  });

  test('5.4: a text is read with its doubled quote as one', () => {
    expect(read('"a""b"')).toMatchObject({ part: 'text', text: 'a"b' });
  });

  test.each([['yes + 1'], ['"2" + 1'], ['sum(1, "2", 3)'], ['max()'], ['min()'], ['1+2&"x"']])(
    'where the standard lets programs differ, a rule is refused: %s',
    (text) => {
      const rule = readRule(text);
      expect(rule.ok ? checkRule(rule.value, someScope).faults.length : 1).toBe(1);
    },
  );
});

/*
 * ISO 80000-1:2009 annex B (equivalents ISO 31-0, JIS Z 8401), from memory: to the range 0.1, ties by rule B, up; never in two steps.
 * Rules round half away from zero, which is rule B above zero; ties to even (IEEE 754, rule A) are not ours.
 */
describe('ISO 80000-1 annex B, rule B, from memory', () => {
  test.each([
    ['round(12.223, 1)', 12.2],
    ['round(12.251, 1)', 12.3],
    ['round(12.275, 1)', 12.3],
    ['round(12.25, 1)', 12.3],
    ['round(12.35, 1)', 12.4],
    ['round_to(12.251, 0.1)', 12.3],
  ])('%s is %d', (text, value) => {
    expect(work(text)).toEqual([value, value]);
  });
});

/* Binary traps, computed: 1.005 x 100 is 100.49999999999999, and 1.1 x 1.1 x 100 is 121.00000000000001. */
describe('rounding behind binary noise', () => {
  test.each([
    ['round(1.005, 2)', 1.01],
    ['round(2.675, 2)', 2.68],
    ['roundup(1.1 * 1.1 * 100, 0)', 121],
    ['round(-2.5)', -3],
    ['round(0.5)', 1],
    ['round(1.5)', 2],
    ['floor(0.3 / 0.1)', 3],
    ['ceiling(0.7 / 0.1)', 7],
  ])('%s is %d', (text, value) => {
    expect(work(text)).toEqual([value, value]);
  });
});

/* Margin m/(1+m), mark-up g/(1-g), price cost (1+m) = cost/(1-g): library guides of business mathematics. */
describe('mark-up and margin as rules', () => {
  test.each([
    ['125 money / 100 money - 1', 0.25],
    ['(125 money - 100 money) / 125 money', 0.2],
    ['round(10 * (1 + 50 %), 2)', 15],
    ['round(50 % / (1 + 50 %), 4)', 0.3333],
    ['round(5 / (1 - 30 %), 2)', 7.14],
    ['round(5 * (1 + 30 %), 2)', 6.5],
    ['round(40 % / (1 - 40 %), 4)', 0.6667],
  ])('%s is %d', (text, value) => {
    expect(work(text)).toEqual([value, value]);
  });
});
