import type { UseName } from '#shared-calc/fields/uses.ts';
import type { CheckResult } from '#shared-calc/bench/bench-types.ts';
import { stateOfAnswer } from '#shared-calc/bench/check-state.ts';
import { showWithUnit, type Display } from '#shared-calc/quantity/shown-unit.ts';
import type { Job } from '#shared-calc/records/records.ts';
import { HEALTH_LEAD, tellsOfUnderFives } from './under-fives.ts';

/** A limit of the place that is not a line of a recipe. */
export interface PlaceCheck extends Pick<CheckResult, 'level' | 'state' | 'says' | 'decides'> {
  readonly limit: 'way in' | 'audience';
}

export type Place = Pick<Job, 'survey' | 'audience' | 'animals'>;

/** Outer measurements of a size, mm; left out if not known. */
export interface OuterSize {
  readonly lengthMm: number | undefined;
  readonly depthMm: number | undefined;
}

/** Outer measurements from a size's figures in mm. */
export function outerSize(figureMm: (use: UseName) => number | undefined): OuterSize {
  return { lengthMm: figureMm('outsideLength'), depthMm: figureMm('outsideDepth') };
}

/**
 * Limits of a job's place for one size. Shelf load and hot day are lines of the recipe; these need the job's own words:
 * the way in, and children under five near animals.
 */
export function placeChecks(place: Place, size: OuterSize, display: Display): readonly PlaceCheck[] {
  return [wayIn(place, size, display), underFives(place)];
}

/**
 * A planted tank is carried upright, so a low height does not help: the lesser of its two outer widths decides, for a
 * hexagon or cylinder the overall one. A tank exactly as wide as the way in does not pass.
 */
function wayIn({ survey: { narrowestMm } }: Place, { lengthMm, depthMm }: OuterSize, display: Display): PlaceCheck {
  const check = { limit: 'way in', decides: 'Crew leader' } as const;
  if (lengthMm === undefined || depthMm === undefined) {
    return { ...check, level: 'watch', state: 'not known yet', says: 'How wide the tank is outside is not known yet.' };
  }
  const least = Math.min(lengthMm, depthMm);
  const carried = `Carried upright, never on its side, the tank is ${mm(least, display)} at its narrowest outside`;
  if (narrowestMm === null) {
    return { ...check, level: 'watch', state: 'not known yet', says: `${carried}; nobody has measured the way in.` };
  }
  const says = `${carried}; the way in is ${mm(narrowestMm, display)} at its narrowest.`;
  return { ...check, level: 'stop', state: stateOfAnswer(least < narrowestMm), says };
}

const noAnimals = /^\s*(?:no|none|no animals?|without(?: animals?)?|plants only|only plants)\s*\.?\s*$/i;

/** The health lead decides; the program never says that a tank is fit for an audience. */
function underFives({ audience, animals }: Place): PlaceCheck {
  const check = {
    limit: 'audience',
    level: 'stop',
    decides: HEALTH_LEAD,
  } as const;
  if (noAnimals.test(animals)) return { ...check, state: 'holds', says: 'No animals are wanted.' };
  if (audience.trim() === '') {
    const says = 'Nobody has written down who is near the tank: ask for children under five.';
    return { ...check, level: 'watch', state: 'not known yet', says };
  }
  if (!tellsOfUnderFives(audience)) {
    return { ...check, state: 'holds', says: `As written down: ${audience.trim()}. No child under five is told of.` };
  }
  const says = 'Children under five may be near it: reptiles and amphibians should not be kept where they are.';
  return { ...check, state: 'fails', says };
}

function mm(value: number, display: Display): string {
  return showWithUnit(value / 1000, 'mm', display);
}
