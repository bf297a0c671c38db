import type { Day } from '#shared-calc/calendar/day.ts';
import type { WatchReport } from '#shared-calc/prepare/watch.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import { added, emptyChange, updated, type Change } from '#shared-calc/records/change.ts';
import type { Actual, Records } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';

/** A size's watch with its readings as they were typed or pasted, signed. */
export interface SignedWatch {
  readonly job: string;
  /** The id of the size's record. */
  readonly size: string;
  readonly on: Day;
  readonly by: string;
  readonly report: WatchReport;
  readonly text: string;
}

const measures = {
  watch_hours: { unit: 'h', of: ({ hours }: WatchReport) => hours },
  watch_highest: { unit: 'degC', of: ({ temperature }: WatchReport) => temperature.most },
  watch_lowest: { unit: 'degC', of: ({ temperature }: WatchReport) => temperature.least },
  watch_dampest: { unit: '%', of: ({ humidity }: WatchReport) => humidity.most },
  watch_driest: { unit: '%', of: ({ humidity }: WatchReport) => humidity.least },
} as const;

type WatchLine = keyof typeof measures;
const watchLines = Object.keys(measures) as readonly WatchLine[];
const LONGEST = 2_000;

/** Keeps a watch with the job: maximum and minimum, and the readings themselves. One kept before is replaced. */
export function keepWatch(records: Pick<Records, 'actual'>, watch: SignedWatch): Result<Change, string> {
  const by = watch.by.trim();
  if (by === '') return failed('Say who signs the readings.');
  const text = tidy(watch.text);
  if (text.length + by.length + SIGNED.length > LONGEST)
    return failed('Too many readings to keep: one an hour is enough. Take some out.');
  const { job, size, on } = watch;
  const taken = watchLines.map((line): Actual => ({
    id: `${size}.${line}`,
    job,
    size,
    line,
    value: cleanNoise(measures[line].of(watch.report)),
    unit: measures[line].unit,
    on,
    note: line === 'watch_hours' ? `${SIGNED}${by}\n${text}` : `${SIGNED}${by}`,
  }));
  const kept = new Map(watchOf(records, size).map((record) => [record.id, record]));
  return ok({
    ...emptyChange(`${job}: watch of ${size}, signed by ${by}`),
    added: taken.filter(({ id }) => !kept.has(id)).map((record) => added('actual', record)),
    updated: taken.flatMap((record) => {
      const before = kept.get(record.id);
      return before ? [updated('actual', before, record)] : [];
    }),
  });
}

const SIGNED = 'signed by ';

export interface KeptWatch {
  readonly on: Day;
  readonly by: string;
  readonly text: string;
}

/** The watch that was kept for a size, its readings as they were. */
export function keptWatch(records: Pick<Records, 'actual'>, size: string): KeptWatch | undefined {
  const hours = watchOf(records, size).find(({ line }) => line === 'watch_hours');
  if (!hours?.note.startsWith(SIGNED)) return undefined;
  const [first = '', ...rest] = hours.note.split('\n');
  return { on: hours.on, by: first.slice(SIGNED.length), text: rest.join('\n') };
}

function watchOf({ actual }: Pick<Records, 'actual'>, size: string): readonly Actual[] {
  return [...actual.values()].filter((each) => each.size === size && watchLines.some((line) => line === each.line));
}

/** Without what a reader passes over: empty rows, several spaces. */
function tidy(text: string): string {
  return text
    .split(/\r\n|\r|\n/)
    .map((row) => row.trim().replaceAll(/[ \t]+/g, ' '))
    .filter((row) => row !== '')
    .join('\n');
}
