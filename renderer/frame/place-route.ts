import { places } from '#shared-calc/contract/places.ts';
import type { PlaceId } from '#shared-calc/contract/places.ts';

/** A view, and what the rest of the link names within it (`#/quotes/Q-0027`). */
export interface Route {
  readonly place: PlaceId;
  readonly rest: readonly string[];
}

const home: Route = { place: 'today', rest: [] };

/** Reads a link's hash; a hash that names no view leads to today. */
export function readRoute(hash: string): Route {
  const [name = '', ...rest] = hash.replace(/^#\/?/, '').split('/').map(decoded);
  const place = places.find((each) => each.id === name);
  return place ? withCards({ place: place.id, rest: rest.filter((part) => part !== '') }) : home;
}

/** The cards were a part of the prep plan: links from then still lead to them. */
function withCards({ place, rest }: Route): Route {
  const at = rest.indexOf('cards');
  if (place !== 'prepare' || at < 0 || at > 1) return { place, rest };
  return { place: 'cards', rest: rest.toSpliced(at, 1) };
}

const ofOneJob: readonly PlaceId[] = ['bench', 'quotes', 'needs'];

/** The link with which a view that works on the open job shows another one; none for the other views. */
export function routeWithJob({ place, rest }: Route, from: string | undefined, to: string): string | undefined {
  const [part] = rest.filter((each) => each !== from);
  const kept = part === undefined ? [] : [part];
  if (place === 'prepare' || place === 'cards' || place === 'jobs') return writeRoute(place, to, ...kept);
  if (place === 'quotes' && part === 'options') return writeRoute(place, part, to);
  // What is missing in the whole workshop is of no job.
  const isOfJob = place === 'prices' || place === 'measures' ? rest.length > 0 : ofOneJob.includes(place);
  return isOfJob ? writeRoute(place, to) : undefined;
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
