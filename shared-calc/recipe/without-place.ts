import type { UseName } from '#shared-calc/fields/uses.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { withoutUndefined } from '#shared-calc/records/without-undefined.ts';

/** What the demo's recipes say of its own rooms and shelf. */
const ofThePlace: ReadonlySet<string> = new Set<UseName>([
  'roomSummer',
  'roomWinter',
  'roomLowest',
  'humiditySummer',
  'humidityWinter',
  'shelfRating',
]);

/** Nothing of the program reads the altitude of a recipe, so its line has no use. */
const ALTITUDE = 'altitude';

/** A line that needs a figure where the demo has one of its own rooms, shelf or town. */
export function withoutPlace(line: Line): Line {
  return ofThePlace.has(line.use ?? '') || line.name === ALTITUDE
    ? withoutUndefined({ ...line, text: '', source: undefined, sourceNote: undefined })
    : line;
}
