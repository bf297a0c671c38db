import { describe, expect, test } from 'vitest';
import { workRule } from '#shared-calc/bench/work-rule.ts';
import { sameDimension } from '#shared-calc/quantity/dimension.ts';
import { readFigure } from '#shared-calc/quantity/read-figure.ts';
import { findUnit } from '#shared-calc/quantity/unit.ts';
import { tradeFunctions } from '#shared-calc/trade/all-functions.ts';

const USUAL_WITHIN = 5e-4;
const inRules = tradeFunctions.filter((each) => each.inRules);
const examples = inRules.flatMap((each) =>
  each.examples.map((example) => ({ within: USUAL_WITHIN, ...example, gives: example.gives, title: each.title })),
);

describe('tradeFunctions in the Function book', () => {
  test('no two are called the same', () => {
    const names = tradeFunctions.map((each) => each.name.toLowerCase());
    expect(names.filter((name, at) => names.indexOf(name) !== at)).toEqual([]);
  });

  test('every one has two examples or more, its sum, help, and where it comes from', () => {
    const bare = tradeFunctions.filter(
      ({ examples: own, sum, help, source, title }) =>
        own.length < 2 || [sum, help, source, title].some((text) => text.trim() === ''),
    );
    expect(bare.map((each) => each.name)).toEqual([]);
  });

  test('help, cautions and notes on what is put in are written for people: a sentence, and no lack of words', () => {
    const unended = tradeFunctions.filter(
      ({ help, caution = 'Fine.' }) => !/[.?!]$/.test(help) || !/[.?!]$/.test(caution),
    );
    const unsaid = inRules.filter(({ args }) => args.some((each) => (each.says ?? '').trim() === ''));
    expect([unended.map((each) => each.name), unsaid.map((each) => each.name)]).toEqual([[], []]);
  });

  test.each(examples)('$rule is $gives', ({ rule, gives, within }) => {
    const printed = readFigure(gives, { unit: 'number' });
    const worked = workRule(rule);
    if (!printed.ok || !worked.ok) throw new Error(JSON.stringify({ printed, worked }));
    const { value, kind } = worked.value;
    expect(kind.is === 'figure' && sameDimension(kind.dimension, printed.value.unit.dimension)).toBe(true);
    expect(Math.abs(Number(value) - printed.value.value)).toBeLessThanOrEqual(
      Math.max(within * Math.abs(printed.value.value), 1e-12),
    );
  });

  test.each(inRules)('$name answers in the unit it promises, where it promises one', ({ gives, examples: own }) => {
    if (typeof gives !== 'string') return;
    const promised = findUnit(gives);
    const worked = own.map((each) => workRule(each.rule));
    const kinds = worked.flatMap((each) => (each.ok ? [each.value.kind] : []));
    expect(kinds).toHaveLength(own.length);
    expect(
      kinds.filter((kind) => kind.is !== 'figure' || !promised || !sameDimension(kind.dimension, promised.dimension)),
    ).toEqual([]);
  });
});
