import { daysBetween, parseDay } from '#shared-calc/calendar/day.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { allRead, logRows, plainNumber, type LogFault, type LogRow } from './log-rows.ts';

/** One reading of the thermometer-hygrometer. */
export interface WatchReading {
  /** Since the first reading. */
  readonly hour: number;
  readonly degC: number;
  /** Percent. */
  readonly humidity: number;
  /** The room beside it, if it was read too. */
  readonly room?: RoomReading;
}

export interface RoomReading {
  readonly degC: number;
  /** Percent. */
  readonly humidity: number;
}

type Clock = 'hours' | 'time of day' | 'day and time';

interface RawReading {
  readonly row: number;
  readonly clock: Clock;
  readonly hour: number;
  readonly degC: number;
  readonly humidity: number;
  readonly room?: RoomReading;
}

/**
 * Reads commissioning readings: a row for each, with time, degC and humidity in percent, then those of the room if read. Times are hours from the
 * start, times of day (an earlier one is on the next day), or days and times; they must rise.
 */
export function readWatchLog(text: string): Result<readonly WatchReading[], readonly LogFault[]> {
  const rows = logRows(text);
  if (rows.length < 2)
    return failed([{ row: 1, says: 'A watch needs two readings or more: time, degC and humidity.' }]);
  const read = allRead(rows.map(readRow));
  return read.ok ? fromFirst(onOneClock(read.value)) : read;
}

function readRow({ row, fields }: LogRow): Result<RawReading, LogFault> {
  const words = fields.flatMap((field) => field.split('T'));
  const [degC, humidity, ...ofRoom] = words.slice(timeWords(words)).map(plainNumber);
  const time = readTime(words.slice(0, timeWords(words)));
  const room = readRoom(ofRoom);
  if (time === undefined || degC === undefined || humidity === undefined || room === 'not a room') {
    return failed({ row, says: `"${fields.join(' ')}" is not time, degC and humidity, as 14:30 24.5 85.` });
  }
  const wrong = [humidity, room?.humidity ?? 0].find((percent) => percent < 0 || percent > 100);
  if (wrong !== undefined) return failed({ row, says: `Humidity runs from 0 to 100 %, not ${wrong}.` });
  return ok({ row, ...time, degC, humidity, ...(room && { room }) });
}

/** A day and a time, or one word. */
function timeWords([first = '']: readonly string[]): number {
  return parseDay(first).ok ? 2 : 1;
}

function readRoom(words: readonly (number | undefined)[]): RoomReading | 'not a room' | undefined {
  const [degC, humidity, ...more] = words;
  if (words.length === 0) return undefined;
  if (degC === undefined || humidity === undefined || more.length > 0) return 'not a room';
  return { degC, humidity };
}

function readTime([first = '', second, ...more]: readonly string[]): Pick<RawReading, 'clock' | 'hour'> | undefined {
  if (more.length > 0) return undefined;
  if (second !== undefined) {
    const day = parseDay(first);
    const hour = timeOfDay(second);
    if (!day.ok || hour === undefined) return undefined;
    return { clock: 'day and time', hour: daysBetween('2000-01-01', day.value) * 24 + hour };
  }
  const clock = timeOfDay(first);
  if (clock !== undefined) return { clock: 'time of day', hour: clock };
  const hours = plainNumber(first);
  return hours === undefined ? undefined : { clock: 'hours', hour: hours };
}

function timeOfDay(text: string): number | undefined {
  const parts = /^(\d{1,2}):(\d{2})(?::\d{2})?$/.exec(text);
  const [hour, minute] = [Number(parts?.[1]), Number(parts?.[2])];
  return parts && hour < 24 && minute < 60 ? hour + minute / 60 : undefined;
}

/** Times of day as hours that continue past midnight. */
function onOneClock(readings: readonly RawReading[]): readonly RawReading[] {
  let days = 0;
  return readings.map((reading, at) => {
    const before = readings[at - 1];
    if (reading.clock === 'time of day' && before && reading.hour < before.hour) days += 24;
    return reading.clock === 'time of day' ? { ...reading, hour: reading.hour + days } : reading;
  });
}

function fromFirst(readings: readonly RawReading[]): Result<readonly WatchReading[], readonly LogFault[]> {
  const [first] = readings;
  const mixed = readings.find(({ clock }) => clock !== first?.clock);
  if (mixed) return failed([{ row: mixed.row, says: `Times are ${first?.clock} before and ${mixed.clock} here.` }]);
  const falls = readings.find(({ hour }, at) => at > 0 && hour <= (readings[at - 1]?.hour ?? 0));
  if (falls) return failed([{ row: falls.row, says: 'Times must rise from reading to reading.' }]);
  const start = first?.hour ?? 0;
  return ok(
    readings.map(({ hour, degC, humidity, room }) => ({ hour: hour - start, degC, humidity, ...(room && { room }) })),
  );
}
