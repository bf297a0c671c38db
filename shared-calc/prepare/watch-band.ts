import type { WatchBand } from './watch.ts';
import { capital } from '#shared-calc/rule/capital.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { givenWords } from './given-words.ts';
import { notGiven, type SizeFigures } from './size-figures.ts';

/**
 * Points of humidity below and above the tank's aim, if the recipe has no band: 75 to 95 % for 90. Common practice, no
 * source.
 */
const BELOW = 15;
const ABOVE = 5;
/** Common practice, no source. */
const usual: WatchBand = { lowestC: 18, highestC: 27, driest: 60, dampest: 100 };

/**
 * The range that a size's animals tolerate, from its recipe; the usual range if it has none, which `bandAssumed`
 * reports.
 */
export function watchBand({ number }: SizeFigures): WatchBand {
  const aim = number('tankHumidity', '%');
  const around = (step: number) => (aim === undefined ? undefined : Math.min(100, Math.max(0, aim + step)));
  return {
    lowestC: number('speciesFloor', 'degC') ?? usual.lowestC,
    highestC: number('speciesCeiling', 'degC') ?? usual.highestC,
    driest: number('bandLow', '%') ?? around(-BELOW) ?? usual.driest,
    dampest: number('bandHigh', '%') ?? around(ABOVE) ?? usual.dampest,
  };
}

/** Bounds that the recipe does not give, each with the usual one that replaces it. */
export function bandAssumed({ has }: SizeFigures, display: Display): readonly string[] {
  const aim = has('tankHumidity');
  return [
    ...(has('speciesFloor')
      ? []
      : [`${capital(notGiven('speciesFloor'))}: ${givenWords(usual.lowestC, 'degC', display)} is taken.`]),
    ...(has('speciesCeiling')
      ? []
      : [`${capital(notGiven('speciesCeiling'))}: ${givenWords(usual.highestC, 'degC', display)} is taken.`]),
    ...(aim || has('bandLow') ? [] : [`${capital(notGiven('bandLow'))}: ${usual.driest} % is taken.`]),
    ...(aim || has('bandHigh') ? [] : [`${capital(notGiven('bandHigh'))}: ${usual.dampest} % is taken.`]),
  ];
}
