import { sayFigures } from '#shared-calc/quantity/said-figures.ts';
import { plainDisplay, type Display } from '#shared-calc/quantity/shown-unit.ts';
import { addDays, type Day } from '#shared-calc/calendar/day.ts';
import { timeWithin } from './straight-lines.ts';
import type { WatchReading } from './watch-log.ts';

/** The range that the animals tolerate: degC, and humidity in percent; both ends are inside. */
export interface WatchBand {
  readonly lowestC: number;
  readonly highestC: number;
  readonly driest: number;
  readonly dampest: number;
}

export interface Watched {
  readonly least: number;
  readonly most: number;
  /** When the highest was read, hours from the start. */
  readonly mostAt: number;
  /** Share of the time within the band, on straight lines between readings. */
  readonly within: number;
}

export interface WatchReport {
  readonly hours: number;
  readonly temperature: Watched;
  readonly humidity: Watched;
}

/** Hours of readings wanted before animals go in. */
export const LEAST_WATCH = 24;
export const FULL_WATCH = 72;

/** Maximum, minimum and share of the time within the band. Readings rise in time; for a single one the share is 0. */
export function watchReport(readings: readonly WatchReading[], band: WatchBand): WatchReport {
  return {
    hours: readings.at(-1)?.hour ?? 0,
    temperature: watched(readings, ({ degC }) => degC, [band.lowestC, band.highestC]),
    humidity: watched(readings, ({ humidity }) => humidity, [band.driest, band.dampest]),
  };
}

function watched(
  readings: readonly WatchReading[],
  of: (reading: WatchReading) => number,
  [low, high]: readonly [number, number],
): Watched {
  const figures = readings.map(of);
  const most = Math.max(...figures);
  const hours = readings.at(-1)?.hour ?? 0;
  const line = readings.map((reading) => [reading.hour, of(reading)] as const);
  return {
    least: Math.min(...figures),
    most,
    mostAt: readings[figures.indexOf(most)]?.hour ?? 0,
    within: hours > 0 ? timeWithin(line, low, high) / hours : 0,
  };
}

/** What the readings show, and who decides; it never states that a tank is fit for animals. */
export function sayWatch(
  { hours, temperature, humidity }: WatchReport,
  band: WatchBand,
  display: Display = plainDisplay,
): readonly string[] {
  const said = (degrees: string) => sayFigures(degrees, display);
  return [
    `Watched ${one(hours)} h: ${said(`${one(temperature.least)} to ${one(temperature.most)} degC, within ${band.lowestC} to ${band.highestC}`)} for ${share(temperature.within)} of the time; humidity ${one(humidity.least)} to ${one(humidity.most)} %, within ${band.driest} to ${band.dampest} for ${share(humidity.within)}.`,
    ...(hours < LEAST_WATCH
      ? [`Too short: ${LEAST_WATCH} to ${FULL_WATCH} h with the lamps on are wanted first.`]
      : []),
    ...(temperature.most > band.highestC
      ? [
          `Over ${said(`${band.highestC} degC`)} after ${one(temperature.mostAt)} h: keep animals out, and look for sun, lamps, heating.`,
        ]
      : []),
    ...(temperature.least < band.lowestC
      ? [`Below ${said(`${band.lowestC} degC`)}: keep animals out, and look at the room at night.`]
      : []),
    ...(humidity.within < 1 - 1e-9 ? ['The humidity left the band: look at mist and vent strip.'] : []),
    'An experienced keeper or vet decides whether animals go in.',
  ];
}

function one(figure: number): string {
  return figure.toFixed(1);
}

/** Rounded down: 99.9 % is not 100 %. */
function share(of: number): string {
  return `${Math.floor(of * 100 + 1e-9)} %`;
}

const looks = [1, 3, 7, 14, 21, 28] as const;
const SETTLED = 14;

/**
 * Days on which to look at a tank whose animals go in sooner than 14 days after the build, counted from the day they go
 * in; empty if the settle-in is long enough.
 */
export function animalsInPlan(
  build: Day,
  settleInDays: number,
): readonly { readonly day: number; readonly date: Day }[] {
  if (settleInDays >= SETTLED) return [];
  const animalsIn = addDays(build, settleInDays);
  return looks.map((day) => ({ day, date: addDays(animalsIn, day) }));
}
