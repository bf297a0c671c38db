import { readerFor } from '#shared-calc/bench/box-reader.ts';
import { namedLines } from '#shared-calc/bench/column-lines.ts';
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
  /** The usual lines of the sheet; a size may have its own. */
  readonly lines: readonly Line[];
  readonly by: Written['by'];
  /** How the workshop writes a figure. */
  readonly decimalComma: boolean;
}

/**
 * The sheet with cells written over; refused if a name is unknown, a text cannot be read, or the lines make a cycle. A
 * text for the whole job goes to every size whose recipe has the line.
 */
export function writeOver(
  sheet: JobSheet,
  typed: readonly Writing[],
  { lines, by, decimalComma }: Over,
): Result<JobSheet, JobFault> {
  const named: NamedWriting[] = [];
  for (const writing of typed) {
    const found = findLines(sheet, writing, lines);
    if (!found.ok) return found;
    const stored = storedWriting(found.value, decimalComma);
    if (!stored.ok) return stored;
    named.push(stored.value);
  }
  const of = (column: string | undefined) =>
    named.map(({ writing }) => writing).filter((each) => each.column === column);
  const next = {
    ...sheet,
    whole: written(sheet.whole, of(undefined), by),
    columns: sheet.columns.map((column) => ({ ...column, locals: written(column.locals, of(column.key), by) })),
  };
  const fault = findUnreadable(named) ?? findLoop(next, named, lines);
  return fault ? failed(fault) : ok(next);
}

/** A writing with the lines that it is for, of each list of lines that has its name. */
interface NamedWriting {
  readonly writing: Writing;
  readonly of: readonly { readonly line: Line; readonly lines: readonly Line[] }[];
}

function findLines(sheet: JobSheet, writing: Writing, usual: readonly Line[]): Result<NamedWriting, JobFault> {
  const { line: name, column: key } = writing;
  const column = sheet.columns.find((each) => each.key === key);
  if (key !== undefined && !column) return failed({ kind: 'no-size', size: key, sizes: keysOf(sheet) });
  const lists = column ? [column.lines ?? usual] : [usual, ...sheet.columns.map(({ lines = usual }) => lines)];
  const of = [...new Set(lists)].flatMap((list) => {
    const line = namedLines(list).get(name);
    return line ? [{ line, lines: list }] : [];
  });
  if (of.length > 0) return ok({ writing, of });
  const near = nearestName(name, new Set(lists.flat().map((line) => line.name)));
  return failed({ kind: 'no-line', line: name, ...(near !== undefined && { near }) });
}

/** As the book stores it: figures with a decimal point, whatever sign the workshop uses. */
function storedWriting({ writing, of }: NamedWriting, decimalComma: boolean): Result<NamedWriting, JobFault> {
  const [first] = of;
  if (!first || writing.text === undefined) return ok({ writing, of });
  const text = storedText(writing.text, first.line, decimalComma);
  if (text.ok) return ok({ writing: { ...writing, text: text.value }, of });
  return failed({ kind: 'unreadable', line: writing.line, text: writing.text, fault: text.fault });
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

function findUnreadable(named: readonly NamedWriting[]): JobFault | undefined {
  for (const { writing, of } of named) {
    const { line: name, text = '' } = writing;
    for (const { line, lines } of of) {
      const reading = readerFor(lines).read(line, text);
      if (reading.is === 'faulty') return { kind: 'unreadable', line: name, text, fault: reading.fault };
    }
  }
  return undefined;
}

function findLoop(sheet: JobSheet, named: readonly NamedWriting[], usual: readonly Line[]): JobFault | undefined {
  for (const column of sheet.columns.length > 0 ? sheet.columns : [bareColumn]) {
    const cycles = cyclesIn(column, sheet.whole, column.lines ?? usual);
    for (const { writing } of named) {
      const { line, text = '' } = writing;
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

function cyclesIn(column: SheetColumn, whole: WrittenByLine, lines: readonly Line[]): Cycles {
  const reader = readerFor(lines);
  const resolve = textResolver({ ...column, locals: textsOf(column.locals) }, textsOf(whole));
  return cyclesOf(new Map(lines.map((line) => [line.name, reader.read(line, resolve(line).text)])));
}
