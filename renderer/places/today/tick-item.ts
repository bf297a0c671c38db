import type { JobApi } from '#renderer/store/job-api.ts';
import type { TodayItem } from '#shared-calc/derive/today-item.ts';

/** The day and the person of what was done, and a word about it. */
export interface Ticked {
  readonly on: string;
  readonly who: string;
  readonly note: string;
}

/** Whether a tick writes the fact here; the acts of the others are in their own view. */
export function isWritten({ tick }: Pick<TodayItem, 'tick'>): boolean {
  return tick.is === 'harvest' || tick.is === 'did';
}

/** Writes the fact of an item; says why not. */
export function tickItem(api: JobApi, { tick, tub, job }: TodayItem, { on, who, note }: Ticked): string | undefined {
  const ofJob = job === undefined ? {} : { job };
  if (tick.is === 'harvest') {
    return tub === undefined
      ? undefined
      : api.doAct('harvestTub', { tub, amount: tick.animals, sold: false, on, ...ofJob });
  }
  if (tick.is !== 'did') return undefined;
  const ofTub = tub === undefined ? {} : { tub };
  return api.doAct('did', { step: tick.step, ends: tick.ends, on, who, note, ...ofJob, ...ofTub });
}
