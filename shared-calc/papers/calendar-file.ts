import type { SaidCaution } from '#shared-calc/cautions/all-cautions.ts';
import { addDays, type Day } from '#shared-calc/calendar/day.ts';

/** An event of whole days, as calendar programs import it. */
export interface CalendarEntry {
  /** The same for the same event every time, so that a newer file moves the event instead of doubling it. */
  readonly uid: string;
  readonly date: Day;
  readonly title: string;
  readonly note?: string;
  /** What to mind on the day. */
  readonly cautions?: readonly SaidCaution[];
  /** Repeats every `everyDays` days, `times` times in all. */
  readonly again?: { readonly everyDays: number; readonly times: number };
}

export interface CalendarFile {
  readonly name: string;
  /** When the file is made, UTC: `2027-03-08T14:02:00Z`. */
  readonly stamp: string;
  readonly entries: readonly CalendarEntry[];
}

/** A calendar as a file of its own kind (RFC 5545): whole days, CRLF, lines folded at 75 octets. */
export function calendarFile({ name, stamp, entries }: CalendarFile): string {
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Loamwright//Prep plan//EN',
    'CALSCALE:GREGORIAN',
    'METHOD:PUBLISH',
    `X-WR-CALNAME:${escaped(name)}`,
    ...entries.flatMap((entry) => eventLines(entry, plainStamp(stamp))),
    'END:VCALENDAR',
  ];
  return lines.map((line) => `${folded(line)}\r\n`).join('');
}

function eventLines(
  { uid, date, title, note = '', cautions = [], again }: CalendarEntry,
  stamp: string,
): readonly string[] {
  const minded = cautions.map(({ says, decides }) => `Caution: ${says} (${decides})`);
  const description = [note, ...minded].filter((words) => words !== '').join('\n');
  return [
    'BEGIN:VEVENT',
    `UID:${escaped(uid)}`,
    `DTSTAMP:${stamp}`,
    `DTSTART;VALUE=DATE:${plainDay(date)}`,
    // The end is exclusive: the first day after the event (RFC 5545, 3.6.1).
    `DTEND;VALUE=DATE:${plainDay(addDays(date, 1))}`,
    ...(again === undefined ? [] : [`RRULE:FREQ=DAILY;INTERVAL=${again.everyDays};COUNT=${again.times}`]),
    `SUMMARY:${escaped(title)}`,
    ...(description === '' ? [] : [`DESCRIPTION:${escaped(description)}`]),
    'TRANSP:TRANSPARENT',
    'END:VEVENT',
  ];
}

function plainDay(day: Day): string {
  return day.replaceAll('-', '');
}

/** `2027-03-08T14:02:00.000Z` as `20270308T140200Z`. */
function plainStamp(instant: string): string {
  return instant.replace(/\.\d+/, '').replaceAll(/[-:]/g, '');
}

/**
 * RFC 5545, 3.3.11: backslash, semicolon, comma and line ends are escaped; other control characters are not allowed.
 */
function escaped(text: string): string {
  return text
    .toWellFormed()
    .replaceAll(/[\\;,]/g, '\\$&')
    .replaceAll(/\r\n|\r|\n/g, '\\n')
    .replaceAll(/[^\P{Cc}\t]/gu, '');
}

const LONGEST = 75;

/**
 * RFC 5545, 3.1: a line has at most 75 octets without its end; it continues after a space, and no character is split.
 */
function folded(line: string): string {
  const parts: string[] = [];
  let part = '';
  let octets = 0;
  for (const sign of line) {
    const size = octetsOf(sign);
    if (octets + size > LONGEST) {
      parts.push(part);
      part = ' ';
      octets = 1;
    }
    part += sign;
    octets += size;
  }
  return [...parts, part].join('\r\n');
}

/** Octets of one character in UTF-8. */
function octetsOf(sign: string): number {
  const code = sign.codePointAt(0) ?? 0;
  if (code < 0x80) return 1;
  if (code < 0x800) return 2;
  return code < 0x1_00_00 ? 3 : 4;
}
