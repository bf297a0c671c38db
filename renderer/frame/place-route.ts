import { places } from '#shared-calc/contract/places.ts';
import type { PlaceId } from '#shared-calc/contract/places.ts';

/** A view, and what the rest of the link names within it (`#/quotes/Q-0027`). */
export interface Route {
  readonly place: PlaceId;
  readonly rest: readonly string[];
}

const home: Route = { place: 'bench', rest: [] };

/** Reads a link's hash; a hash that names no view leads to the size bench. */
export function readRoute(hash: string): Route {
  const [name = '', ...rest] = hash.replace(/^#\/?/, '').split('/').map(decoded);
  const place = places.find((each) => each.id === name);
  return place ? { place: place.id, rest: rest.filter((part) => part !== '') } : home;
}

export function writeRoute(place: PlaceId, ...rest: readonly string[]): string {
  return `#/${[place, ...rest.map(encodeURIComponent)].join('/')}`;
}

/** A part with an invalid escape is used unchanged. */
function decoded(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return part;
  }
}
