import { describe, expect, test } from 'vitest';
import { isUse, useNames, useOf, uses, type UseName } from '#shared-calc/fields/uses.ts';
import { buildSteps } from '#shared-calc/papers/build-steps.ts';
import { kindOfUnit, sayKind } from '#shared-calc/quantity/kind.ts';
import { demoRecords } from '#tests/demo-bench.ts';

const lines = [...demoRecords().line.values()];

/** Read where a workshop has such a line; no house recipe does. */
const inNoHouse: readonly UseName[] = ['speciesEmergency'];

describe('uses', () => {
  test.each(inNoHouse)('%s is read from a line that a workshop may add', (use) => {
    const { kind, unit, optional } = useOf(use);
    expect([sayKind(kindOfUnit(unit)), optional, lines.some((each) => each.use === use)]).toEqual([kind, true, false]);
  });

  test.each(useNames.filter((use) => !inNoHouse.includes(use)))(
    '%s has the kind of its unit, and a line of some house recipe',
    (use) => {
      const { kind, unit, goesWith } = useOf(use);
      const line = lines.find((each) => each.use === use);

      expect(sayKind(kindOfUnit(unit))).toBe(kind);
      expect(line && sayKind(kindOfUnit(line.unit))).toBe(kind);
      expect(goesWith === undefined || isUse(goesWith)).toBe(true);
    },
  );

  test('every brace of a build step is a use, or the size of the tank', () => {
    const said = buildSteps.flatMap(({ says }) => says.map((each) => (typeof each === 'string' ? each : each.says)));
    const braces = said.flatMap((says) => [...says.matchAll(/\{(\w+)\}/g)].map(([, name = '']) => name));

    expect(braces.length).toBeGreaterThan(20);
    expect(braces.filter((name) => name !== 'size' && !Object.hasOwn(uses, name))).toEqual([]);
  });
});
