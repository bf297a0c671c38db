import { describe, expect, test } from 'vitest';
import { sayUnits } from '#shared-calc/words/say-units.ts';

describe('sayUnits', () => {
  test.each([
    ['Over 27 degC after 10.0 h', 'Over 27\u00a0°C after 10.0 h'],
    ['18\u00a0degC to 27\u00a0degC', '18\u00a0°C to 27\u00a0°C'],
    ['maximum and degC', 'maximum and °C'],
    ['Glue 0.5400\u00a0m2 of background', 'Glue 0.5400\u00a0m² of background'],
    ['5 mol/m2/d', '5\u00a0mol/m²/d'],
  ])('%s', (sentence, read) => {
    expect(sayUnits(sentence)).toBe(read);
  });
});
