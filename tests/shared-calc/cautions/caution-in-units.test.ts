import { describe, expect, test } from 'vitest';
import { cautionIds, sayCaution, type CautionId } from '#shared-calc/cautions/all-cautions.ts';
import { cautionInUnits } from '#shared-calc/cautions/caution-in-units.ts';
import { plainDisplay, type Display } from '#shared-calc/quantity/shown-unit.ts';
import { treatmentCautions } from '#shared-calc/trade/heat/treatment-cautions.ts';
import { sayUnits } from '#shared-calc/words/say-units.ts';

const us: Display = { ...plainDisplay, units: 'us', fractions: true };

function said(id: CautionId): string {
  return sayUnits(cautionInUnits(sayCaution(id), us).says).replaceAll('\u00a0', ' ');
}

describe('cautions in a US workshop', () => {
  test.each([
    ['reservoir', 'Clean the can every 14 days: warm water in fine mist can grow Legionella at 68 to 113 °F.'],
    ['animalTransport', 'Animals apart from the tank, 64 to 75 °F, dark, short.'],
    ['diseaseWaste', 'Chytrid dies within minutes at 140 °F, within hours at 99, and of many disinfectants.'],
    [
      'openings',
      'Screen every opening, 0.039 in or finer; no gap over 0.079 in: frogs, hatchlings and feeder flies leave.',
    ],
    ['litterDensity', 'Mixed hardwood, measured in the woods; 1.1 to 3.9 oz/gal were seen.'],
  ] as const)('%s', (id, words) => {
    expect(said(id)).toBe(words);
  });

  test('a limit of the oven is a temperature, what dry leaves need more is a step', () => {
    const [bake, moist] = treatmentCautions({ way: 'bake', aim: 'clean' }).map((each) => cautionInUnits(each, us).says);
    expect(bake).toMatch(/^Bake attended, at 248 degF or less, /);
    expect(moist).toBe('Moisten the leaves 16 h before; dry ones need up to 36 F_deg more.');
  });

  test('none is left in metric units', () => {
    expect(
      cautionIds.map(said).filter((words) => /\d (?:°C|degC|K|mm|cm|m|L|mL|kg|g|g\/L)(?![\w/])/.test(words)),
    ).toEqual([]);
  });

  test('names and figures that were filled in stay', () => {
    const lifting = sayCaution('lifting', (figure) => (figure === 'tank' ? 'Ferns 30 cm' : '120 lb'));
    expect(cautionInUnits(lifting, us)).toEqual(lifting);
  });

  test('a metric workshop reads every caution as it is, and so do words of an earlier wording', () => {
    const all = cautionIds.map((id) => sayCaution(id));
    expect(all.map((each) => cautionInUnits(each, plainDisplay))).toEqual(all);
    const older = { id: 'animalTransport', says: 'Animals in a box of their own, 18 to 24 degC.' } as const;
    expect(cautionInUnits(older, us)).toEqual(older);
  });
});
