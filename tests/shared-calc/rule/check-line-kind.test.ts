import { describe, expect, test } from 'vitest';
import { kindOfUnit, YES_NO } from '#shared-calc/quantity/kind.ts';
import { checkLineKind } from '#shared-calc/rule/check-line-kind.ts';

const place = { from: 2, to: 6 };

describe('checkLineKind', () => {
  test.each([
    ['mm', kindOfUnit('in')],
    ['each', kindOfUnit('number')],
    ['%', kindOfUnit('each')],
    ['degC', kindOfUnit('degF')],
    ['yes_no', YES_NO],
    ['choice', { is: 'choice', options: ['tap'] } as const],
    ['each/d', kindOfUnit('%/d')],
  ])('a line in %s takes a figure of its kind', (unit, given) => {
    expect(checkLineKind(place, given, unit)).toBe(undefined);
  });

  test.each([
    ['mm', kindOfUnit('L')],
    ['degC', kindOfUnit('K')],
    ['K', kindOfUnit('degC')],
    ['yes_no', kindOfUnit('number')],
    ['choice', YES_NO],
    ['mm', kindOfUnit('number')],
  ])('a line in %s refuses another', (unit, given) => {
    expect(checkLineKind(place, given, unit)).toEqual({
      kind: 'wrong-kind-for-line',
      wanted: kindOfUnit(unit),
      unit,
      given,
      ...place,
    });
  });
});
