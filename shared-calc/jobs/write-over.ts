import { boxReader, type BoxReader } from '#shared-calc/bench/box-reader.ts';
import { cyclesOf, type Cycles } from '#shared-calc/bench/cycles.ts';
import { textResolver } from '#shared-calc/recipe/resolve-box.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { nearestName } from '#shared-calc/rule/nearest.ts';
import type { JobFault } from './job-fault.ts';
import { keysOf, textsOf, type JobSheet, type SheetColumn, type Written, type WrittenByLine } from './job-sheet.ts';
import type { Writing } from './read-writing.ts';
import { storedText } from '#shared-calc/recipe/stored-text.ts';

interface Over {
  /** The lines of the sheet's recipe. */
  readonly lines: readonly Line[];
  readonly by: Written['by'];
  /** How the workshop writes a figure. */
  readonly decimalComma: boolean;
}

/**
 * The sheet with cells written over; refused if a name is unknown, a text cannot be read, or the lines make a cycle.
 */
export function writeOver(
  sheet: JobSheet,
  typed: readonly Writing[],
  { lines, by, decimalComma }: Over,
): Result<JobSheet, JobFault> {
  const nowhere = findNowhere(sheet, typed, lines);
  if (nowhere) return failed(nowhere);
  const parsed = writingsToKeep(typed, lines, decimalComma);
  if (!parsed.ok) return parsed;
  const writings = parsed.value;
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

/** Writing the same text again leaves a cell with its author. */
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
    const cycles = cyclesIn(column, sheet.whole, reading);
    for (const { line, text = '' } of writings) {
      const cycle = cycles.get(line);
      if (cycle) return { kind: 'loop', line, text, cycle };
    }
  }
  return undefined;
}

/** A job without sizes is checked against a tank without measurements. */
const bareColumn: SheetColumn = {
  size: '',
  key: '',
  tank: { id: '', label: '', shape: 'rectangle', clientsOwn: false, note: '' },
  label: '',
  count: 1,
  locals: new Map(),
};

function cyclesIn(column: SheetColumn, whole: WrittenByLine, { lines, reader }: Reading): Cycles {
  const resolve = textResolver({ ...column, locals: textsOf(column.locals) }, textsOf(whole));
  return cyclesOf(new Map(lines.map((line) => [line.name, reader.read(line, resolve(line).text)])));
}

/** What to write over as the book stores it: figures with a decimal point, whatever sign the workshop uses. */
function writingsToKeep(
  writings: readonly Writing[],
  lines: readonly Line[],
  decimalComma: boolean,
): Result<readonly Writing[], JobFault> {
  const parsed: Writing[] = [];
  for (const writing of writings) {
    const line = lines.find((each) => each.name === writing.line);
    const text = line && writing.text !== undefined ? storedText(writing.text, line, decimalComma) : ok(writing.text);
    if (!text.ok)
      return failed({ kind: 'unreadable', line: writing.line, text: writing.text ?? '', fault: text.fault });
    parsed.push({ ...writing, text: text.value });
  }
  return ok(parsed);
}
