import { describe, expect, test } from 'vitest';
import { argumentWords, findFunction, functionGroups } from '#renderer/places/function-book/function-words.ts';
import { exampleTexts, tryFunction } from '#renderer/places/function-book/try-function.ts';
import { whenRefused } from '#renderer/places/function-book/when-refused.ts';
import { plainDisplay } from '#shared-calc/quantity/shown-unit.ts';
import { tradeFunctions } from '#shared-calc/trade/all-functions.ts';
import { insideSize } from '#shared-calc/trade/geometry/inside-size.ts';
import { looseNeeded } from '#shared-calc/trade/media/loose-needed.ts';
import { tankFloorArea } from '#shared-calc/trade/geometry/tank-floor-area.ts';

describe('tryFunction', () => {
  test('a bare number takes the unit of its argument', () => {
    const { rule, answer, faults } = tryFunction(looseNeeded, ['16.02', '2 %', '0.03'], plainDisplay);
    expect([rule, answer, faults]).toEqual(['loose_needed(16.02 L, 2 %, 0.03)', { figure: '16.84', unit: 'L' }, []]);
  });

  test('a decimal comma is read, and the rule keeps the point', () => {
    const { rule, answer } = tryFunction(looseNeeded, ['16,02 L', '2 %', '3 %'], {
      ...plainDisplay,
      decimalComma: true,
    });
    expect([rule, answer]).toEqual(['loose_needed(16.02 L; 2 %; 3 %)', { figure: '16,84', unit: 'L' }]);
  });

  test('a figure with two readings is asked for under its argument, and is never two arguments', () => {
    const comma = { ...plainDisplay, decimalComma: true };
    expect([
      tryFunction(looseNeeded, ['1,602 L', '2 %', '3 %'], plainDisplay).faults[0],
      tryFunction(looseNeeded, ['16.02 L', '2 %', '3 %'], comma).faults[0],
    ]).toEqual(['1,602 can be read in two ways: 1602 or 1.602?', 'Here the decimal sign is the comma: 16,02']);
  });

  test("the book's example stands in the form as this workshop types it", () => {
    expect(exampleTexts(looseNeeded, { ...plainDisplay, decimalComma: true })).toEqual(['16,02 L', '2 %', '3 %']);
  });

  test('a rule may stand for a figure, a choice is its word', () => {
    expect(tryFunction(tankFloorArea, ['rectangle', '2 * 450 mm', '445', '0', '0'], plainDisplay).answer).toEqual({
      figure: '0.4005',
      unit: 'm2',
    });
  });

  test('what is wrong is said under its argument', () => {
    expect([
      tryFunction(looseNeeded, ['16.02 L', '3 mm', '3 %'], plainDisplay).faults,
      tryFunction(looseNeeded, ['16.02 L', '', '3 %'], plainDisplay).faults,
    ]).toEqual([
      [undefined, 'Settle (share lost by settling) needs a share (%). You gave 3 mm.', undefined],
      [undefined, 'Settle (share lost by settling) needs a figure.', undefined],
    ]);
  });

  test('what no argument alone has done is said with the answer', () => {
    const { faults, wrong } = tryFunction(looseNeeded, ['16.02 L', '100 %', '3 %'], plainDisplay);
    expect([faults, wrong?.includes('Settling')]).toEqual([[], true]);
  });

  test('an answer to be looked at twice says so', () => {
    expect(tryFunction(insideSize, ['100', '2', '6', '0', '0'], plainDisplay).warnings).toEqual([
      { says: 'Inside size is only 88 mm; is this already an inside size?', decides: 'Builder' },
    ]);
  });

  test('every example of the book works in the try box as it is printed', () => {
    const inRules = tradeFunctions.filter(({ inRules: is, examples }) => is && examples.length > 0);
    const unanswered = inRules
      .filter((entry) => !tryFunction(entry, exampleTexts(entry, plainDisplay), plainDisplay).answer)
      .map(({ name }) => name);
    expect(unanswered).toEqual([]);
  });
});

describe('whenRefused', () => {
  test('tells how a function refuses another kind and less than nothing', () => {
    expect(whenRefused(looseNeeded)).toEqual([
      'Placed (litres after settling in the tank) needs a volume (L, mL, gal). You gave 40 mm.',
      expect.stringContaining('Placed litres cannot be below zero.'),
    ]);
  });
});

describe('functionGroups', () => {
  test('every function stands under one heading', () => {
    const listed = functionGroups().flatMap(({ functions }) => functions.map(({ name }) => name));
    expect(listed.toSorted()).toEqual(tradeFunctions.map(({ name }) => name).toSorted());
  });
});

describe('findFunction', () => {
  test.each([
    ['loose_needed', 'loose_needed'],
    ['Loose litres needed', 'loose_needed'],
    ['steam temp', 'steam_temp'],
    ['nothing of the kind', undefined],
  ])('%s', (words, name) => {
    expect(findFunction(words)?.name).toBe(name);
  });
});

describe('argumentWords', () => {
  test('a share is told in %', () => {
    expect(looseNeeded.args.map(argumentWords)).toEqual([
      { kind: 'volume', unit: 'L', range: '0 to 500 L', meaning: 'litres after settling in the tank' },
      { kind: 'share', unit: '%', range: '0 to 40 %', meaning: 'share lost by settling' },
      { kind: 'share', unit: '%', range: '0 to 50 %', meaning: 'share lost by spilling and sieving' },
    ]);
  });
});
