import type { SizeFigures } from './size-figures.ts';

/** From which temperature on a tank's people act, and when it is an emergency: by its kind of animal, or its recipe. */
export interface HeatWords {
  readonly above: string;
  readonly emergency: string;
}

export function heatWords({ number, words, actFrom }: SizeFigures): HeatWords {
  const known = (use: 'speciesCeiling' | 'speciesEmergency') => number(use, 'degC') !== undefined;
  if (actFrom !== undefined) {
    const danger = known('speciesEmergency') ? 'speciesEmergency' : 'speciesCeiling';
    const emergency = known(danger) ? `Above ${words(danger)} is an emergency.` : UNKNOWN;
    return { above: `From ${actFrom} on`, emergency };
  }
  return {
    above: known('speciesCeiling') ? `Above ${words('speciesCeiling')}` : 'Above what its animals stand, not known yet',
    emergency: known('speciesEmergency') ? `Above ${words('speciesEmergency')} is an emergency.` : UNKNOWN,
  };
}

const UNKNOWN = 'When it is an emergency is not known yet: ask the keeper or vet.';
