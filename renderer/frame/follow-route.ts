import { signal } from '@preact/signals';
import type { ReadonlySignal } from '@preact/signals';
import { readRoute } from './place-route.ts';
import type { Route } from './place-route.ts';

/** The page's route, in step with the link in the address bar. */
export function followRoute(page: Window): ReadonlySignal<Route> {
  const route = signal(readRoute(page.location.hash));
  page.addEventListener('hashchange', () => {
    route.value = readRoute(page.location.hash);
  });
  return route;
}
