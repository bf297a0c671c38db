import type { ReadonlySignal } from '@preact/signals';
import type { PrepareHands } from '#renderer/store/prepare-hands.ts';

/** What the culture board keeps while the page is open. */
export interface CultureDesk {
  readonly hands: PrepareHands;
  readonly flies: ReadonlySignal<number>;
  readonly wishFlies: (aWeek: number) => void;
}
