import type { SizeFigures } from './size-figures.ts';

/** From which temperature on a tank's people act, and when it is an emergency, by the recipe's own envelope. */
export interface HeatWords {
  readonly above: string;
  readonly emergency: string;
}

/** For cards that are not of one size, whose ceilings may differ. */
export const heatOfAnySize: HeatWords = {
  above: "Above the animals' ceiling",
  emergency: 'When it is an emergency the keeper or vet says.',
};

export function heatWords({ number, words }: SizeFigures): HeatWords {
  const known = (use: 'speciesCeiling' | 'speciesEmergency') => number(use, 'degC') !== undefined;
  return {
    above: known('speciesCeiling') ? `Above ${words('speciesCeiling')}` : 'Above what its animals stand, not known yet',
    emergency: known('speciesEmergency')
      ? `Above ${words('speciesEmergency')} is an emergency.`
      : 'When it is an emergency is not known yet: ask the keeper or vet.',
  };
}

export function heatCaution({ above, emergency }: HeatWords): string {
  return `${above} act: lights off, an ice bottle outside the glass, a fan across the top. ${emergency}`;
}
