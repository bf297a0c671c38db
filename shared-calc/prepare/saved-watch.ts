import { keysOf } from '#shared-calc/fields/keys-of.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import type { Actual, Records } from '#shared-calc/records/records.ts';
import type { WatchReport } from './watch.ts';

/** The stored results of a watch, each figure as a measure of its size. */
export const watchMeasures = {
  watch_hours: { unit: 'h', of: ({ hours }: WatchReport) => hours },
  watch_highest: { unit: 'degC', of: ({ temperature }: WatchReport) => temperature.most },
  watch_lowest: { unit: 'degC', of: ({ temperature }: WatchReport) => temperature.least },
  watch_dampest: { unit: '%', of: ({ humidity }: WatchReport) => humidity.most },
  watch_driest: { unit: '%', of: ({ humidity }: WatchReport) => humidity.least },
} as const;

export const watchLines = keysOf(watchMeasures);

/** How the note of a measure begins; for the hours, the readings follow below it. */
export const SIGNED = 'signed by ';

export interface SavedWatch {
  readonly on: Day;
  readonly by: string;
  readonly text: string;
}

/** The stored watch of a size, with its original readings. */
export function savedWatch(records: Pick<Records, 'actual'>, size: string): SavedWatch | undefined {
  const hours = watchOf(records, size).find(({ line }) => line === 'watch_hours');
  if (!hours?.note.startsWith(SIGNED)) return undefined;
  const [first = '', ...rest] = hours.note.split('\n');
  return { on: hours.on, by: first.slice(SIGNED.length), text: rest.join('\n') };
}

export function watchOf({ actual }: Pick<Records, 'actual'>, size: string): readonly Actual[] {
  return [...actual.values()].filter((each) => each.size === size && watchLines.some((line) => line === each.line));
}
