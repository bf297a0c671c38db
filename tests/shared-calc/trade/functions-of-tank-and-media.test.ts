import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { findUnit } from '#shared-calc/quantity/unit.ts';
import type { Argument } from '#shared-calc/rule/signature.ts';
import { tradeFunctionsA } from '#shared-calc/trade/functions-of-tank-and-media.ts';
import type { TradeFunction } from '#shared-calc/trade/trade-function.ts';

const inRules = tradeFunctionsA.filter((each) => each.inRules);
const figure = fc.oneof(
  fc.constantFrom(-1, 0, 1, 3),
  fc.integer({ min: -1e9, max: 1e9 }).map((millionths) => millionths / 1e6),
);

function anyValue({ takes }: Argument): fc.Arbitrary<number | string> {
  return typeof takes === 'string' ? figure : fc.constantFrom(...takes);
}

function saysAll(made: TradeFunction, values: readonly (number | string)[]): readonly (string | undefined)[] {
  const answer = made.compute(values);
  return typeof answer === 'number' ? [made.warn?.(values, answer)] : [answer.refused];
}

describe('tradeFunctionsA', () => {
  test('every function stands there once, with two examples, words and units that are known', () => {
    const names = tradeFunctionsA.map((each) => each.name);
    expect(new Set(names).size).toBe(names.length);
    const bare = ({ title, sum, help, source, examples }: TradeFunction) =>
      examples.length < 2 || [title, sum, help, source].includes('');
    expect(tradeFunctionsA.filter(bare).map((each) => each.name)).toEqual([]);
    const units = inRules.flatMap((made) => [made.gives, ...made.args.map((each) => each.takes)]);
    const named = units.filter((unit) => typeof unit === 'string' && unit !== 'any').map(String);
    expect(named.filter((unit) => !findUnit(unit))).toEqual([]);
  });

  test.each(inRules.map((made) => [made.name, made] as const))(
    '%s answers any figures with a figure or a sentence, the same each time, and leaves them as they were',
    (_, made) => {
      fc.assert(
        fc.property(fc.tuple(...made.args.map(anyValue)), (values) => {
          const given = Object.freeze([...values]);
          const answer = made.compute(given);
          expect(typeof answer !== 'number' || Number.isFinite(answer)).toBe(true);
          for (const says of saysAll(made, given)) expect(says ?? 'None.').toMatch(/^[A-Z0-9].*[.?]$/);
          expect(made.compute(given)).toEqual(answer);
        }),
      );
    },
  );
});
