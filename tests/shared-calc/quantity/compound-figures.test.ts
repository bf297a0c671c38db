import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { workRule } from '#shared-calc/bench/work-rule.ts';
import { ruleWorking } from '#shared-calc/papers/rule-working.ts';
import { isPlain, perDimension, timesDimension } from '#shared-calc/quantity/dimension.ts';
import { figureKindOfUnit } from '#shared-calc/quantity/kind.ts';
import { readFigure } from '#shared-calc/quantity/read-figure.ts';
import { plainDisplay, showWithUnit } from '#shared-calc/quantity/shown-unit.ts';
import { fromBase, toBase, unitOf, unitSymbols } from '#shared-calc/quantity/unit.ts';
import { writeWithUnit } from '#shared-calc/quantity/write-figure.ts';

/** Units that a compound may contain: all except temperature readings and dimensionless units. */
const simple = unitSymbols.filter((symbol) => {
  const { dimension, zero } = unitOf(symbol);
  return zero === undefined && !isPlain(dimension);
});
const oneUnit = fc.constantFrom(...simple);
const compound = fc
  .tuple(fc.array(oneUnit, { minLength: 1, maxLength: 2 }), fc.array(oneUnit, { maxLength: 3 }))
  .filter(([over, under]) => over.length + under.length > 1)
  .map(([over, under]) => [over.join('.'), ...under].join('/'))
  .filter((symbol) => !isPlain(unitOf(symbol).dimension));
const figure = fc.integer({ min: 1, max: 9_999_999 }).map((thousandths) => thousandths / 1000);

const measured = fc.tuple(figure, oneUnit);

/** A written figure, parsed again in its unit. */
function readBack(text: string, decimalComma = false) {
  const read = readFigure(text.replaceAll('\u00a0', ' ').replaceAll(decimalComma ? /(?<=\d)\.(?=\d)/g : ',', ''), {
    unit: 'number',
    decimalComma,
  });
  if (!read.ok) throw new Error(`${text}: ${read.fault.kind}`);
  const { value, unit } = read.value;
  return { value: fromBase(value, unit), kind: figureKindOfUnit(unit), unit };
}

/** Half of the last written decimal place. */
function halfPlace(text: string): number {
  const [, part = ''] = /\.(\d+)(?:\u00a0|$)/.exec(text) ?? [];
  return 0.5 * 10 ** -part.length + 1e-9;
}

/** The result of a rule as shown, and its working. */
function worked(rule: string): readonly string[] {
  const answer = workRule(rule);
  if (!answer.ok) throw new Error(`${rule}: ${JSON.stringify(answer.fault)}`);
  const { value, unit } = answer.value;
  return [showWithUnit(value, unit, { ...plainDisplay, currency: 'money' }), ...ruleWorking(answer.value)];
}

describe('a figure in any compound unit', () => {
  test.each(['m/s', 'kg/m3', 'W.m2', 'm.kg', 'mol/m2/d', 'money/km'])(
    'in %s: written, it is read as the same',
    (unit) => {
      const text = writeWithUnit(toBase(12.34, unitOf(unit)), unit);
      const read = readBack(text);
      expect([text, read.unit.dimension]).toEqual([`12.34\u00a0${unit}`, unitOf(unit).dimension]);
      expect(read.value).toBeCloseTo(12.34, 9);
    },
  );

  test('written and read back it is the same figure, as far as it is written, of the same kind', () => {
    fc.assert(
      fc.property(compound, figure, fc.boolean(), (unit, value, decimalComma) => {
        const options = { decimalComma, currency: 'money' };
        const text = writeWithUnit(toBase(value, unitOf(unit)), unit, options);
        const read = readBack(text, decimalComma);
        expect(read.kind).toEqual(figureKindOfUnit(unitOf(unit)));
        const last = /[.,](\d{1,2})\u00a0/.exec(text)?.[1]?.length ?? 0;
        expect(Math.abs(read.value - value)).toBeLessThanOrEqual(0.5 * 10 ** -last + 1e-6);
        expect(writeWithUnit(toBase(read.value, unitOf(unit)), unit, options)).toBe(text);
      }),
      { numRuns: 500 },
    );
  });
});

describe('a product or a quotient of two figures', () => {
  test('is shown in a unit of its own kind, never as a count', () => {
    fc.assert(
      fc.property(measured, fc.constantFrom('*', '/'), measured, ([a, one], sign, [b, other]) => {
        const of = sign === '*' ? timesDimension : perDimension;
        const wanted = of(unitOf(one).dimension, unitOf(other).dimension);
        const [shown = ''] = worked(`${a} ${one} ${sign} ${b} ${other}`);
        const read = readBack(shown);
        expect(read.kind.dimension).toEqual(wanted);
        const inBase = toBase(a, unitOf(one)) * toBase(b, unitOf(other)) ** (sign === '*' ? 1 : -1);
        const exact = fromBase(inBase, read.unit);
        expect(Math.abs(read.value - exact)).toBeLessThanOrEqual(halfPlace(shown) + Math.abs(exact) * 1e-12);
        expect(shown.endsWith('each') && !isPlain(wanted)).toBe(false);
      }),
      { numRuns: 300 },
    );
  });

  test('2 kg * 3 m is 6 m.kg and not 6 of anything', () => {
    expect(worked('2 kg * 3 m')).toEqual(['6.00\u00a0m.kg', '2 kg * 3 m = 6.000\u00a0m.kg']);
  });
});

describe('yes and no', () => {
  test('carry no unit, whatever is compared', () => {
    fc.assert(
      fc.property(figure, oneUnit, fc.constantFrom('>', '<', '>=', '<=', '='), figure, (a, unit, sign, b) => {
        const [shown = '', working = ''] = worked(`${a} ${unit} ${sign} ${b} ${unit}`);
        expect(['yes', 'no']).toContain(shown);
        expect(working.endsWith(` = ${shown}`)).toBe(true);
      }),
      { numRuns: 200 },
    );
  });

  test('nor in any unit that a line has', () => {
    const words = simple.flatMap((unit) => [true, false].map((value) => showWithUnit(value, unit, plainDisplay)));
    expect(new Set(words)).toEqual(new Set(['yes', 'no']));
  });
});
