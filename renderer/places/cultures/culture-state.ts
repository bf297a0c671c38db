import type { ReadonlySignal } from '@preact/signals';
import type { JobApi } from '#renderer/store/job-api.ts';

/** What the culture board keeps while the page is open. */
export interface CultureState {
  readonly api: JobApi;
  readonly flies: ReadonlySignal<number>;
  readonly wishFlies: (aWeek: number) => void;
}
