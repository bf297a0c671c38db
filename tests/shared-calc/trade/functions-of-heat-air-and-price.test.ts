import { describe, expect, test } from 'vitest';
import { readFigure } from '#shared-calc/quantity/read-figure.ts';
import { fromBase, unitOf } from '#shared-calc/quantity/unit.ts';
import { tradeFunctionsB } from '#shared-calc/trade/functions-of-heat-air-and-price.ts';
import type { TradeFunction } from '#shared-calc/trade/trade-function.ts';

const inRules = tradeFunctionsB.filter((each) => each.inRules);
const examples = inRules.flatMap((fn) => fn.examples.map((example) => ({ fn, ...example })));

describe('tradeFunctionsB', () => {
  test.each(examples)('the Function book says that $rule gives $gives', ({ fn, rule, gives, within }) => {
    const wanted = figure(gives, unitGiven(fn));
    const answer = fn.compute(figuresOf(rule, fn));
    expect(Math.abs(Number(answer) - wanted)).toBeLessThanOrEqual((within ?? 5e-4) * Math.abs(wanted));
  });

  test.each(examples)('$rule is checked to its printed digits', ({ gives, within }) => {
    const [digits = ''] = gives.split(' ');
    const half = 0.5 / 10 ** (digits.split('.')[1] ?? '').length / Math.abs(Number(digits));
    expect(within).toBeLessThanOrEqual(half * 1.15);
  });

  test.each(tradeFunctionsB)('$name shows two examples or more, and its source', ({ examples: shown, source }) => {
    expect([shown.length >= 2, source.length > 0]).toEqual([true, true]);
  });

  test.each(inRules)('$name has a name that rules can use and units that are known', ({ name, args, gives }) => {
    expect(name).toMatch(/^[a-z][a-z0-9_]*$/);
    expect(() => args.map((argument) => unitOf(String(argument.takes)))).not.toThrow();
    expect(() => unitOf(String(gives))).not.toThrow();
  });

  test('functions over lists and dates have no name in rules, and say so', () => {
    const lists = tradeFunctionsB.filter((each) => !each.inRules);
    expect(lists.map((each) => each.name)).toEqual([
      'KILL_TOTAL',
      'LEAF_TREAT_TIME',
      'CULTURES_TO_KEEP',
      'COVER_PANE',
      'LANDED_COST',
      'TASK_MINUTES',
      'TAX_SPLIT',
      'DEPOSIT_DUE',
      'WORKDAY_SHIFT',
      'ORDER_BY',
      'READY_DATE',
      'SERVICE_DATES',
    ]);
    expect(lists.map((each) => each.compute([]))).toEqual(
      lists.map((each) => ({ refused: `${each.title} works over lists or dates and has no name in rules.` })),
    );
  });

  test('no name stands twice', () => {
    const names = tradeFunctionsB.map((each) => each.name);
    expect(new Set(names).size).toBe(names.length);
  });

  test('whoever is cautioned is told who decides', () => {
    expect(tradeFunctionsB.filter((each) => (each.caution === undefined) !== (each.decides === undefined))).toEqual([]);
  });

  test('a figure that is worked leaves what it was given as it was', () => {
    for (const { fn, rule } of examples) {
      const figures = Object.freeze(figuresOf(rule, fn));
      expect(() => fn.compute(figures)).not.toThrow();
    }
  });
});

/** Literals of `name(650 m, 15 psi)` in the units that the function works in. */
function figuresOf(rule: string, fn: TradeFunction): readonly number[] {
  const [, inside = ''] = /^\w+\((.*)\)$/.exec(rule) ?? [];
  return inside.split(', ').map((text, at) => figure(text, String(fn.args[at]?.takes)));
}

function figure(text: string, unit: string): number {
  const read = readFigure(text, { unit: 'number' });
  if (!read.ok) throw new Error(`no figure: ${text}`);
  return fromBase(read.value.value, unitOf(unit));
}

function unitGiven(fn: TradeFunction): string {
  return String(fn.gives);
}
