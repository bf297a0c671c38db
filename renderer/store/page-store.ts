import { signal, type Signal } from '@preact/signals';
import type { BenchController } from '#renderer/bench/bench-controller.ts';
import type { Bridge } from '#renderer/bridge.ts';
import { ok, type Result } from '#shared-calc/result.ts';
import { openBenchStore, type BenchStore } from './bench-store.ts';
import { openBookStore, readFirst, type BookStore } from './book-store.ts';
import { houseAsk, type HouseAsk } from './house-ask.ts';
import type { Clock } from './clock.ts';

/** A dialog over the bench. */
export type BenchDialog =
  | { readonly is: 'take' | 'prices' | 'sold' }
  | { readonly is: 'compare'; readonly one: string };

/** The state shared by all views of the page. */
export interface PageStore {
  readonly book: BookStore;
  readonly bench: BenchStore;
  readonly clock: Clock;
  readonly house: HouseAsk;
  readonly dialog: Signal<BenchDialog | undefined>;
  /** The controller of the bench's grid while it is on the page. */
  readonly strips: { current: BenchController | null };
}

/** Reads the book and creates the page's state. The sentence says why the book cannot be read. */
export async function openPageStore(
  bridge: Bridge,
  clock: Clock,
  benchLater = false,
): Promise<Result<PageStore, string>> {
  const first = await readFirst(bridge, clock);
  if (!first.ok) return first;
  const book = openBookStore({ bridge, clock, first: first.value });
  const dialog = signal<BenchDialog | undefined>(undefined);
  const house = houseAsk(book);
  const strips: PageStore['strips'] = { current: null };
  const bench: BenchStore = openBenchStore({
    book,
    clock,
    later: benchLater,
    editHouse: house.edit,
    takeSize: () => (dialog.value = { is: 'take' }),
    go: (place) => strips.current?.go(place),
    leavePanel: () => {
      const place = bench.chosen.peek();
      if (place) strips.current?.go(place);
    },
  });
  return ok({ book, bench, clock, house, dialog, strips });
}
