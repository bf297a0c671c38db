import { nearestName } from './nearest.ts';

/** " Did you mean dam_height?" behind a sentence about a name nobody knows; nothing where none is near. */
export function didYouMean(name: string, known: Iterable<string>): string {
  const near = nearestName(name, [...known]);
  return near === undefined ? '' : ` Did you mean ${near}?`;
}
