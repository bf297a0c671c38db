import type { JobApi } from '#renderer/store/job-api.ts';
import type { TodayItem } from '#shared-calc/derive/today-item.ts';

/** The day and the person of what was done, and a word about it. */
export interface Ticked {
  readonly on: string;
  readonly who: string;
  readonly note: string;
}

/** Whether a tick writes the fact here; the acts of the others are in their own view. */
export function isWritten({ tick }: TodayItem): boolean {
  return tick.is === 'harvest' || tick.is === 'did';
}

/** Writes the fact of an item; says why not. What is noted is also the reason, where something stands against it. */
export function tickItem(api: JobApi, { tick, tub, job }: TodayItem, { on, who, note }: Ticked): string | undefined {
  const of = { ...(tub !== undefined && { tub }), ...(job !== undefined && { job }) };
  if (tick.is === 'did') {
    const said = note.trim() === '' ? {} : { note, anyway: note };
    return api.doAct('did', { ...of, step: tick.step, ends: tick.ends, on, who, ...said });
  }
  if (tick.is !== 'harvest' || tub === undefined) return undefined;
  return api.doAct('harvestTub', { tub, amount: tick.animals, sold: false, on, ...(job !== undefined && { job }) });
}
