import { sayAllFigures } from '#shared-calc/quantity/said-figures.ts';
import { plainDisplay, type Display } from '#shared-calc/quantity/shown-unit.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { killOverTime, type CoreReading } from '#shared-calc/trade/heat/kill-total.ts';
import type { TreatmentAim, TreatmentWay } from '#shared-calc/trade/heat/leaf-treatment.ts';
import { heatTarget, heatTargets } from '#shared-calc/trade/heat-targets.ts';
import { allRead, logRows, plainNumber, type LogFault, type LogRow } from './log-rows.ts';
import { timeWithin } from './straight-lines.ts';

/** Reads a core probe's log: a row for each reading, in minutes from the start and degC. Times must rise. */
export function readProbeLog(text: string): Result<readonly CoreReading[], readonly LogFault[]> {
  const rows = logRows(text);
  if (rows.length < 2)
    return failed([{ row: 1, says: 'A log needs two readings or more: minutes and degC in a row.' }]);
  const read = allRead(rows.map(readRow));
  if (!read.ok) return read;
  const at = read.value.findIndex(([minute], index) => index > 0 && minute <= (read.value[index - 1]?.[0] ?? 0));
  return at < 0 ? read : failed([timesMustRise(read.value, rows, at)]);
}

function readRow({ row, fields }: LogRow): Result<CoreReading, LogFault> {
  const [minute, degC] = fields.map(plainNumber);
  if (fields.length !== 2 || minute === undefined || degC === undefined) {
    return failed({ row, says: `"${fields.join(' ')}" is not minutes and degC, as 12 84.5.` });
  }
  return minute < 0 ? failed({ row, says: `${minute} min is before the start.` }) : ok([minute, degC]);
}

function timesMustRise(readings: readonly CoreReading[], rows: readonly LogRow[], at: number): LogFault {
  const says = `Times must rise: ${readings[at]?.[0]} min comes after ${readings[at - 1]?.[0]} min.`;
  return { row: rows[at]?.row ?? at + 1, says };
}

export interface CoreHeat {
  /** The highest core temperature, degC. */
  readonly hottest: number;
  /** Minutes counted: at the reference for steam; at or above the least temperature for the others. */
  readonly reached: number;
  readonly wanted: number;
  readonly enough: boolean;
  /** A colder core counts for nothing, degC. */
  readonly leastC: number;
  /** The reference of the minutes, in words. */
  readonly against: string;
  /** For steam, the running total of minutes at the reference. */
  readonly curve: readonly { readonly minute: number; readonly degC: number; readonly kill: number }[];
}

const { sterileSteam } = heatTargets;
const steamScale = { ...sterileSteam.scale, leastC: sterileSteam.coreC };

export interface LoggedTreatment {
  readonly way: TreatmentWay;
  readonly aim: TreatmentAim;
  readonly moistened: boolean;
}

/**
 * The treatment that a core log proves, measured against the target of its aim: minutes at the reference, worked out
 * exactly along the log, or minutes at or above the least temperature. A sentence if the log cannot be used.
 */
export function coreHeat(readings: readonly CoreReading[], treatment: LoggedTreatment): Result<CoreHeat, string> {
  const grown = killOverTime(readings, steamScale);
  if ('refused' in grown) return failed(grown.refused);
  const target = heatTarget(treatment) ?? sterileSteam;
  const reached = target.scale ? (grown.at(-1) ?? 0) : timeWithin(readings, target.coreC, Infinity);
  return ok({
    hottest: Math.max(...readings.map(([, degC]) => degC)),
    reached,
    wanted: target.minutes,
    enough: reached >= target.minutes - 1e-9,
    leastC: target.coreC,
    against: target.says,
    curve: readings.map(([minute, degC], at) => ({ minute, degC, kill: grown[at] ?? 0 })),
  });
}

/** What the log shows, in one sentence; it never states that anything is sterile. */
export function sayCoreHeat(
  { hottest, reached, wanted, enough, against }: CoreHeat,
  display: Display = plainDisplay,
): string {
  const one = (figure: number) => (Math.floor(figure * 10 + 1e-9) / 10).toFixed(1);
  const end = enough ? 'The core was there long enough.' : 'Not long enough: treat this batch again.';
  return sayAllFigures(
    `Core up to ${one(hottest)} degC; ${one(reached)} of ${wanted} min (${against}). ${end}`,
    display,
  );
}
