import type { WatchBand } from './watch.ts';
import { capital } from '#shared-calc/rule/capital.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { givenWords } from './given-words.ts';
import { notGiven, type SizeFigures } from './size-figures.ts';

/** Common practice, no source. */
const usual: WatchBand = { lowestC: 18, highestC: 27, driest: 60, dampest: 100 };

/**
 * The range that a size's animals tolerate, from its recipe; the usual range if it has none, which `bandAssumed`
 * reports.
 */
export function watchBand({ number }: SizeFigures): WatchBand {
  return {
    lowestC: number('speciesFloor', 'degC') ?? usual.lowestC,
    highestC: number('speciesCeiling', 'degC') ?? usual.highestC,
    driest: number('bandLow', '%') ?? usual.driest,
    dampest: number('bandHigh', '%') ?? usual.dampest,
  };
}

/** Bounds that the recipe does not give, each with the usual one that replaces it. */
export function bandAssumed({ has }: SizeFigures, display: Display): readonly string[] {
  return [
    ...(has('speciesFloor')
      ? []
      : [`${capital(notGiven('speciesFloor'))}: ${givenWords(usual.lowestC, 'degC', display)} is taken.`]),
    ...(has('speciesCeiling')
      ? []
      : [`${capital(notGiven('speciesCeiling'))}: ${givenWords(usual.highestC, 'degC', display)} is taken.`]),
    ...(has('bandLow') ? [] : [`${capital(notGiven('bandLow'))}: ${usual.driest} % is taken.`]),
    ...(has('bandHigh') ? [] : [`${capital(notGiven('bandHigh'))}: ${usual.dampest} % is taken.`]),
  ];
}
