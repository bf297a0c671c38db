import type { PlaceView } from '#renderer/frame/page-view.ts';
import type { PlaceId } from '#renderer/frame/places.ts';
import type { Route } from '#renderer/frame/place-route.ts';
import type { PageStore } from '#renderer/store/page-store.ts';
import { benchPlace } from './bench/bench-place.tsx';
import { cultureBookPlace } from './culture-book/culture-book-place.tsx';
import { culturesPlace } from './cultures/cultures-place.tsx';
import { functionBookPlace } from './function-book/function-book-place.tsx';
import { moneyHands } from './jobs/money-hands.ts';
import { jobsPlace } from './jobs/jobs-place.tsx';
import { materialBookPlace } from './material-book/material-book-place.tsx';
import { needsPlace } from './needs/needs-place.tsx';
import { plantBookPlace } from './plant-book/plant-book-place.tsx';
import { preparePlace } from './prepare/prepare-place.tsx';
import { quotesPlace } from './quotes/quotes-place.tsx';
import { rateBookPlace } from './rate-book/rate-book-place.tsx';
import { recipePlace } from './recipe/recipe-place.tsx';
import { runPlace } from './run/run-place.tsx';
import { storePlace } from './store/store-place.tsx';
import { tankBookPlace } from './tank-book/tank-book-place.tsx';
import { workshopPlace } from './workshop/workshop-place.tsx';

/** A place is made once from the store, and then asked for its view whenever something it reads changes. */
export type PlaceMaker = (store: PageStore) => (route: Route) => PlaceView;

/** Every place that there is; one that is left out says so calmly. */
export const allPlaces: Readonly<Partial<Record<PlaceId, PlaceMaker>>> = {
  bench: benchPlace,
  jobs: (store) => jobsPlace(moneyHands(store)),
  quotes: (store) => quotesPlace(moneyHands(store)),
  run: (store) => runPlace(moneyHands(store)),
  store: (store) => storePlace(moneyHands(store)),
  prepare: (store) => preparePlace(moneyHands(store)),
  cultures: (store) => culturesPlace(moneyHands(store)),
  needs: ({ book, bench }) => needsPlace({ ...book, laid: bench.laid, lay: bench.lay }),
  recipe: recipePlace,
  'tank-book': ({ book }) => tankBookPlace(book),
  'material-book': ({ book }) => materialBookPlace(book),
  'plant-book': ({ book }) => plantBookPlace(book),
  'culture-book': ({ book }) => cultureBookPlace(book),
  'rate-book': ({ book }) => rateBookPlace(book),
  'function-book': ({ book }) => functionBookPlace(book),
  workshop: ({ book }) => workshopPlace(book),
};
