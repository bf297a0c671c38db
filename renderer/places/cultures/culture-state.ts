import type { ReadonlySignal } from '@preact/signals';
import type { JobApi } from '#renderer/store/job-api.ts';

/** State of the culture board while the page is open. */
export interface CultureState {
  readonly api: JobApi;
  readonly flies: ReadonlySignal<number>;
  readonly wishFlies: (aWeek: number) => void;
}
