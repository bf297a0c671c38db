import type { Bench } from '#shared-calc/bench/open-bench.ts';
import type { UseName } from '#shared-calc/fields/uses.ts';
import { savedWatch } from '#shared-calc/prepare/saved-watch.ts';
import { readWatchLog, type WatchReading } from '#shared-calc/prepare/watch-log.ts';
import { sizeFigures } from '#shared-calc/prepare/size-figures.ts';
import { plainDisplay } from '#shared-calc/quantity/shown-unit.ts';
import { lineFor } from '#shared-calc/recipe/lines-by-use.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { airChangesByWater } from '#shared-calc/trade/air-and-light/air-changes-by-water.ts';
import { vapourGrams } from '#shared-calc/trade/air-and-light/vapour-in-air.ts';
import type { Derived } from './derived.ts';

/** The guesses that a watch answers, each by the use of its line. */
export const watchFactors = { air: 'airFactor', damp: 'dampFactor', warm: 'warmFactor' } as const;
export type WatchFactor = keyof typeof watchFactors;

/** What a taught guess may still be off by, as shares of itself. */
const OFF_BY: Readonly<Record<WatchFactor, readonly [least: number, most: number]>> = {
  air: [0.7, 1.4],
  damp: [0.7, 1.4],
  warm: [0.85, 1.15],
};
/** Readings that are farther from the model than this are taken for wrong. */
const FITS = [0.2, 5] as const;
const NEAR_FULL = 95; // percent

export interface WatchAsked {
  readonly job: string;
  readonly column: string;
  readonly factor: WatchFactor;
  /** mL a day that were put in and not drained, over two weeks; the air is taught by it. */
  readonly lostMl?: number | undefined;
}

/** What the watch of a size says of a guess. */
export interface WatchLesson {
  readonly line: Line;
  /** Measured over worked. */
  readonly ratio: number;
  readonly likely: number;
  readonly least: number;
  readonly most: number;
}

/** Why a watch teaches nothing. */
export type WatchLessonFault =
  | { readonly kind: 'no-watch'; readonly column: string }
  | { readonly kind: 'no-room-reading' }
  | { readonly kind: 'no-water-lost' }
  | { readonly kind: 'rest-near-full'; readonly humidity: number }
  | { readonly kind: 'reading-does-not-fit'; readonly ratio: number }
  /** What a tank holds of damp hangs on the air that goes through it. */
  | { readonly kind: 'air-not-taught' }
  | { readonly kind: 'factor-not-worked'; readonly factor: WatchFactor };

type Ratio = Result<number, WatchLessonFault>;

/** Sets a guess by what was measured; changes nothing by itself. */
export function watchLesson(derived: Derived, asked: WatchAsked): Result<WatchLesson, WatchLessonFault> {
  const { factor, column } = asked;
  const readings = readingsOf(derived, asked);
  if (!readings.ok) return readings;
  const { bench } = readings.value;
  const { number } = sizeFigures(bench, column, plainDisplay);
  const line = lineFor(bench.lines(column), watchFactors[factor]);
  const present = number(watchFactors[factor], 'number');
  if (!line || present === undefined) return failed({ kind: 'factor-not-worked', factor });
  if (factor === 'damp' && !isAirTaught(bench, column)) return failed({ kind: 'air-not-taught' });
  const ratio = fitting(factor, ratioOf[factor]({ rows: readings.value.rows, number, lostMl: asked.lostMl }));
  if (!ratio.ok) return ratio;
  const likely = rounded(ratio.value * present);
  const ends = OFF_BY[factor].map((share) => rounded(likely * share));
  return ok({ line, ratio: ratio.value, likely, least: ends[0] ?? likely, most: ends[1] ?? likely });
}

function fitting(factor: WatchFactor, ratio: Ratio): Ratio {
  if (!ratio.ok) return ratio;
  if (!Number.isFinite(ratio.value)) return failed({ kind: 'factor-not-worked', factor });
  const [least, most] = FITS;
  const fits = ratio.value >= least && ratio.value <= most;
  return fits ? ratio : failed({ kind: 'reading-does-not-fit', ratio: ratio.value });
}

/** Whether the air is known as well as a reading could tell: a figure without a range was measured or decided. */
function isAirTaught(bench: Bench, column: string): boolean {
  const line = lineFor(bench.lines(column), watchFactors.air);
  const { value, range } = line ? bench.box(column, line.name) : {};
  if (typeof value !== 'number' || typeof range !== 'object') return true;
  const [least, most] = OFF_BY.air;
  // Ends were rounded to three digits.
  return range.from >= least * value * 0.99 && range.to <= most * value * 1.01;
}

function readingsOf(derived: Derived, { job, column }: WatchAsked) {
  const worked = derived.job(job);
  const size = worked?.sheet.columns.find(({ key }) => key === column)?.size;
  const kept = size === undefined ? undefined : savedWatch(derived.records, size);
  const log = kept && readWatchLog(kept.text);
  if (!worked || !log?.ok) return failed({ kind: 'no-watch', column } as const);
  return ok({ rows: log.value, bench: worked.bench });
}

interface Measured {
  readonly rows: readonly WatchReading[];
  readonly number: (use: UseName, unit: string) => number | undefined;
  readonly lostMl: number | undefined;
}

const ratioOf: Readonly<Record<WatchFactor, (measured: Measured) => Ratio>> = {
  air: ({ rows, number, lostMl }) => {
    if (lostMl === undefined) return failed({ kind: 'no-water-lost' });
    const withRoom = rows.flatMap((row) => (row.room ? [{ ...row, room: row.room }] : []));
    if (withRoom.length === 0) return failed({ kind: 'no-room-reading' });
    const changes = airChangesByWater.compute([
      number('airVolume', 'm3') ?? 0,
      lostMl,
      meanOf(rows, ({ degC }) => degC),
      meanOf(rows, ({ humidity }) => humidity / 100),
      meanOf(withRoom, ({ room }) => room.degC),
      meanOf(withRoom, ({ room }) => room.humidity / 100),
    ]);
    if (typeof changes !== 'number') return failed({ kind: 'reading-does-not-fit', ratio: 0 });
    return ok(changes / (number('airChanges', 'each/h') ?? 0));
  },
  damp: ({ rows, number }) => {
    const rest = outermost(rows, (one, other) => one.humidity < other.humidity);
    if (!rest?.room) return failed({ kind: 'no-room-reading' });
    if (rest.humidity >= NEAR_FULL) return failed({ kind: 'rest-near-full', humidity: rest.humidity });
    const [full, inside, room] = [
      vapourGrams(rest.degC, 1),
      vapourGrams(rest.degC, rest.humidity / 100),
      vapourGrams(rest.room.degC, rest.room.humidity / 100),
    ].map(Number);
    const shares = ((inside ?? 0) - (room ?? 0)) / ((full ?? 0) - (inside ?? 0));
    return ok((shares * (number('airFlow', 'm3/h') ?? 0)) / (number('evaporating', 'm3/h') ?? 0));
  },
  warm: ({ rows, number }) => {
    const hottest = outermost(rows, (one, other) => one.degC > other.degC);
    if (!hottest?.room) return failed({ kind: 'no-room-reading' });
    return ok((hottest.degC - hottest.room.degC) / (number('lightWarmingUp', 'K') ?? 0));
  },
};

/** Of the rows that have the room beside them. */
function outermost(
  rows: readonly WatchReading[],
  isFarther: (one: WatchReading, other: WatchReading) => boolean,
): WatchReading | undefined {
  return rows
    .filter(({ room }) => room !== undefined)
    .reduce<WatchReading | undefined>((found, row) => (!found || isFarther(row, found) ? row : found), undefined);
}

function meanOf<T>(rows: readonly T[], of: (row: T) => number): number {
  return rows.reduce((sum, row) => sum + of(row), 0) / rows.length;
}

/** Three digits. */
function rounded(figure: number): number {
  return Number(figure.toPrecision(3));
}
