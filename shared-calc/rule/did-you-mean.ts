import { nearestName } from './nearest.ts';

/** " Did you mean dam_height?" to follow a sentence about an unknown name; empty if no known name is near. */
export function didYouMean(name: string, known: Iterable<string>): string {
  const near = nearestName(name, [...known]);
  return near === undefined ? '' : ` Did you mean ${near}?`;
}
