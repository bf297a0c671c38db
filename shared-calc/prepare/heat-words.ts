import type { SizeFigures } from './size-figures.ts';

/** From which temperature on a tank's people act, and when it is an emergency, by the recipe's own envelope. */
export interface HeatWords {
  readonly above: string;
  readonly emergency: string;
}

export function heatWords({ number, words }: SizeFigures): HeatWords {
  const known = (use: 'speciesCeiling' | 'speciesEmergency') => number(use, 'degC') !== undefined;
  return {
    above: known('speciesCeiling') ? `Above ${words('speciesCeiling')}` : 'Above what its animals stand, not known yet',
    emergency: known('speciesEmergency')
      ? `Above ${words('speciesEmergency')} is an emergency.`
      : 'When it is an emergency is not known yet: ask the keeper or vet.',
  };
}
