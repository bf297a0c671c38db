import type { Signal } from '@preact/signals';
import type { JobApi } from '#renderer/store/job-api.ts';

/** State of Today while the page is open. */
export interface TodayState {
  readonly api: JobApi;
  /** Whose items are shown; everyone's without one. */
  readonly who: Signal<string | undefined>;
  /** The item that is being ticked. */
  readonly ticked: Signal<string | undefined>;
}
