import type { ReadonlySignal } from '@preact/signals';
import type { PlanBook } from '#renderer/places/prepare/plan-book.ts';
import type { PrepareHands } from '#renderer/places/prepare/prepare-hands.ts';

/** What the culture board keeps while the page is open. */
export interface CultureDesk {
  readonly hands: PrepareHands;
  readonly plans: PlanBook;
  readonly flies: ReadonlySignal<number>;
  readonly wishFlies: (aWeek: number) => void;
}
