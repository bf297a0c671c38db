import type { ReadonlySignal, Signal } from '@preact/signals';
import type { JobApi } from '#renderer/store/job-api.ts';
import type { TubWay } from '#shared-calc/prepare/tub-ways.ts';

/** State of the culture board while the page is open. */
export interface CultureState {
  readonly api: JobApi;
  readonly flies: ReadonlySignal<number>;
  readonly wishFlies: (aWeek: number) => void;
  /** How new tubs are started. */
  readonly way: Signal<TubWay>;
}
