import type { PlaceView } from '#renderer/frame/page-view.ts';
import type { PlaceId } from '#shared-calc/contract/places.ts';
import type { Route } from '#renderer/frame/place-route.ts';
import type { PageStore } from '#renderer/store/page-store.ts';
import { aboutPlace } from './about/about-place.tsx';
import { animalBookPlace } from './animal-book/animal-book-place.tsx';
import { benchPlace } from './bench/bench-place.tsx';
import { cultureBookPlace } from './culture-book/culture-book-place.tsx';
import { culturesPlace } from './cultures/cultures-place.tsx';
import { functionBookPlace } from './function-book/function-book-place.tsx';
import { keysPlace } from './keys/keys-place.tsx';
import { jobApi } from '#renderer/store/job-api.ts';
import { jobsPlace } from './jobs/jobs-place.tsx';
import { materialBookPlace } from './material-book/material-book-place.tsx';
import { measuresPlace } from './measures/measures-place.tsx';
import { needsPlace } from './needs/needs-place.tsx';
import { plantBookPlace } from './plant-book/plant-book-place.tsx';
import { cardsPlace } from './prepare/cards-place.tsx';
import { preparePlace } from './prepare/prepare-place.tsx';
import { openPrepareState } from './prepare/prepare-state.ts';
import type { ListState } from './price-lists/list-state.ts';
import { priceListsPlace } from './price-lists/price-lists-place.tsx';
import { pricesPlace } from './prices/prices-place.tsx';
import { quotesPlace } from './quotes/quotes-place.tsx';
import { rateBookPlace } from './rate-book/rate-book-place.tsx';
import { recipePlace } from './recipe/recipe-place.tsx';
import { ordersPlace } from './orders/orders-place.tsx';
import { runPlace } from './run/run-place.tsx';
import { storePlace } from './store/store-place.tsx';
import { tankBookPlace } from './tank-book/tank-book-place.tsx';
import { todayPlace } from './today/today-place.tsx';
import { workshopPlace } from './workshop/workshop-place.tsx';

/** Creates every view over the store. A view is asked again whenever a signal it reads changes. */
export function openPlaces(store: PageStore, lists: ListState): Readonly<Record<PlaceId, (route: Route) => PlaceView>> {
  const { book, bench } = store;
  const money = jobApi(store);
  const prepare = openPrepareState(money, window);
  return {
    bench: benchPlace(store),
    today: todayPlace(money),
    jobs: jobsPlace(money),
    quotes: quotesPlace(money),
    run: runPlace(money),
    prices: pricesPlace(money),
    measures: measuresPlace(money),
    'price-lists': priceListsPlace(lists),
    orders: ordersPlace(money),
    store: storePlace(money),
    prepare: preparePlace(money, prepare),
    cards: cardsPlace(money, prepare),
    cultures: culturesPlace(money),
    needs: needsPlace({ ...book, opened: bench.opened, open: bench.open }),
    recipe: recipePlace(store),
    'tank-book': tankBookPlace(book),
    'material-book': materialBookPlace(book),
    'plant-book': plantBookPlace(book),
    'culture-book': cultureBookPlace(book),
    'animal-book': animalBookPlace(book),
    'rate-book': rateBookPlace(book),
    'function-book': functionBookPlace(book),
    workshop: workshopPlace(book),
    keys: keysPlace(),
    about: aboutPlace(book),
  };
}
