import { describe, expect, test } from 'vitest';
import { sayAllFigures, sayFigures } from '#shared-calc/quantity/said-figures.ts';
import { plainDisplay, type Display } from '#shared-calc/quantity/shown-unit.ts';

const us: Display = { ...plainDisplay, units: 'us', fractions: true };

describe('figures in a sentence', () => {
  test.each([
    ['20 to 45 degC', '68 to 113 degF'],
    ['60 degC, within hours at 37', '140 degF, within hours at 99'],
    ['97.81 degC', '208.1 degF'],
    ['5 K', '9 F_deg'],
    ['1 mm', '0.039 in'],
    ['650 m', '2,133 ft'],
    ['43.51 L', '11.49 gal'],
    ['8 to 29 g/L', '1.1 to 3.9 oz/gal'],
    ['14 days', '14 days'],
    ['30 mA', '30 mA'],
  ])('%s is %s in a US workshop', (words, shown) => {
    expect([sayFigures(words, us), sayFigures(words, plainDisplay)]).toEqual([shown, words]);
  });

  test('each figure of a sentence is said in its own unit', () => {
    expect(sayAllFigures('Core up to 119.7 degC; 30.0 of 30 min (30 min at 121 degC, z 10 K).', us)).toBe(
      'Core up to 247.5 degF; 30.0 of 30 min (30 min at 250 degF, z 18 F_deg).',
    );
    expect(sayAllFigures('T07 of 3 of 4 min: turn down, or 2.7 L.', us)).toBe(
      'T07 of 3 of 4 min: turn down, or 0.71 gal.',
    );
  });
});
