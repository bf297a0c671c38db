import { boxReader, type BoxReader } from '#shared-calc/bench/box-reader.ts';
import { ringsOf, type Rings } from '#shared-calc/bench/rings.ts';
import { textResolver } from '#shared-calc/recipe/resolve-box.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { nearestName } from '#shared-calc/rule/nearest.ts';
import type { JobFault } from './job-fault.ts';
import { keysOf, textsOf } from './job-sheet.ts';
import type { JobSheet, SheetColumn, Written, WrittenByLine } from './job-sheet.ts';
import { keptWritings } from './kept-writings.ts';
import type { Writing } from './read-writing.ts';

interface Over {
  /** The lines of the sheet's recipe. */
  readonly lines: readonly Line[];
  readonly by: Written['by'];
  /** How the workshop writes a figure. */
  readonly decimalComma: boolean;
}

/** The sheet with boxes written over; what names nothing, cannot be read or makes a loop is refused. */
export function writeOver(
  sheet: JobSheet,
  typed: readonly Writing[],
  { lines, by, decimalComma }: Over,
): Result<JobSheet, JobFault> {
  const nowhere = findNowhere(sheet, typed, lines);
  if (nowhere) return failed(nowhere);
  const kept = keptWritings(typed, lines, decimalComma);
  if (!kept.ok) return kept;
  const writings = kept.value;
  const of = (column: string | undefined) => writings.filter((each) => each.column === column);
  const next = {
    ...sheet,
    whole: written(sheet.whole, of(undefined), by),
    columns: sheet.columns.map((column) => ({ ...column, locals: written(column.locals, of(column.key), by) })),
  };
  const reader = boxReader(lines);
  const fault = findUnreadable(writings, lines, reader) ?? findLoop(next, writings, { lines, reader });
  return fault ? failed(fault) : ok(next);
}

function findNowhere(sheet: JobSheet, writings: readonly Writing[], lines: readonly Line[]): JobFault | undefined {
  const names = new Set(lines.map((line) => line.name));
  const sizes = keysOf(sheet);
  for (const { line, column } of writings) {
    if (column !== undefined && !sizes.includes(column)) return { kind: 'no-size', size: column, sizes };
    if (names.has(line)) continue;
    const near = nearestName(line, names);
    return { kind: 'no-line', line, ...(near !== undefined && { near }) };
  }
  return undefined;
}

/** The same text again leaves a box with whoever wrote it. */
function written(before: WrittenByLine, writings: readonly Writing[], by: Written['by']): WrittenByLine {
  const after = new Map(before);
  for (const { line, text } of writings) {
    const old = after.get(line);
    if (text === undefined) after.delete(line);
    else if (old?.text !== text) after.set(line, { text, note: old?.note ?? '', by });
  }
  return after;
}

function findUnreadable(writings: readonly Writing[], lines: readonly Line[], reader: BoxReader): JobFault | undefined {
  for (const { line: name, text = '' } of writings) {
    const line = lines.find((each) => each.name === name);
    const reading = line && reader.read(line, text);
    if (reading?.is === 'faulty') return { kind: 'unreadable', line: name, text, fault: reading.fault };
  }
  return undefined;
}

interface Reading {
  readonly lines: readonly Line[];
  readonly reader: BoxReader;
}

function findLoop(sheet: JobSheet, writings: readonly Writing[], reading: Reading): JobFault | undefined {
  for (const column of sheet.columns.length > 0 ? sheet.columns : [bareColumn]) {
    const rings = ringsIn(column, sheet.whole, reading);
    for (const { line, text = '' } of writings) {
      const ring = rings.get(line);
      if (ring) return { kind: 'loop', line, text, ring };
    }
  }
  return undefined;
}

/** A job with no size yet is judged as one with a tank that nobody has measured. */
const bareColumn: SheetColumn = {
  size: '',
  key: '',
  tank: { id: '', label: '', shape: 'rectangle', clientsOwn: false, note: '' },
  label: '',
  count: 1,
  locals: new Map(),
};

function ringsIn(column: SheetColumn, whole: WrittenByLine, { lines, reader }: Reading): Rings {
  const resolve = textResolver({ ...column, locals: textsOf(column.locals) }, textsOf(whole));
  return ringsOf(new Map(lines.map((line) => [line.name, reader.read(line, resolve(line).text)])));
}
