import { openBookStore, readFirst, type BookStore } from '#renderer/store/book-store.ts';
import { openBenchStore, type BenchStore } from '#renderer/store/bench-store.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { demoRecords } from '#tests/demo-bench.ts';
import { ownClock, type OwnClock } from './own-clock.ts';
import { ownService, type OwnService } from './own-service.ts';

/** A page's book over a service in memory. */
export interface BookAtHand {
  readonly book: BookStore;
  readonly service: OwnService;
  readonly clock: OwnClock;
  /** Resolves when the service has answered every call. */
  readonly quiet: () => Promise<void>;
}

export async function bookAtHand(records: Records = demoRecords()): Promise<BookAtHand> {
  const service = ownService(records);
  const clock = ownClock();
  const first = await readFirst(service.bridge, clock);
  if (!first.ok) throw new Error(first.fault);
  const book = openBookStore({ bridge: service.bridge, clock, first: first.value });
  return { book, service, clock, quiet: async () => new Promise((resolve) => setTimeout(resolve, 0)) };
}

export interface BenchAtHand extends BookAtHand {
  readonly bench: BenchStore;
}

/** The demo's first job on the bench: T03, T07 and T08. */
export async function benchAtHand(records?: Records): Promise<BenchAtHand> {
  const hand = await bookAtHand(records);
  const bench = openBenchStore({
    ...hand,
    takeSize: () => undefined,
    go: () => undefined,
    leavePanel: () => undefined,
  });
  return { ...hand, bench };
}
