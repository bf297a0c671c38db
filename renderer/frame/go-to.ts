import type { MenuAct } from '#renderer/kit/menu-list.tsx';
import type { PlaceId } from '#shared-calc/contract/places.ts';
import { writeRoute } from './place-route.ts';

/** The act of a menu that leads to a view, and to what is named within it. */
export function goTo(says: string, place: PlaceId, ...rest: readonly string[]): MenuAct {
  return { says, run: () => (location.hash = writeRoute(place, ...rest)) };
}
