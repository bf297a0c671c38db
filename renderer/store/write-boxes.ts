import type { BoxChange, BoxPlace } from '#renderer/bench/view-model.ts';
import { textResolver } from '#shared-calc/recipe/resolve-box.ts';
import type { Change } from '#shared-calc/records/change.ts';
import type { Line, Records } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { sayBoxCause, sayBoxFault } from '#shared-calc/words/say-box-cause.ts';
import { calledOf } from '#shared-calc/recipe/column.ts';
import { calledByWords, calledLine } from '#shared-calc/words/called-by-words.ts';
import type { BenchSource } from './bench-source.ts';
import type { BenchColumn } from '#shared-calc/jobs/worked-job.ts';
import { hasTwoReadings, writtenText, textInLabel } from './entry-text.ts';
import { findCycle, type ReadLines } from '#shared-calc/bench/find-cycle.ts';
import type { LineFaces } from './line-faces.ts';
import { localChange, type LocalPut } from './local-changes.ts';

/** What writing in a job's boxes goes by. */
export interface WriteDesk {
  readonly records: Records;
  readonly job: string;
  readonly source: BenchSource;
  readonly faces: LineFaces;
  readonly read: ReadLines;
}

/** One box as it is to be. */
interface Put extends LocalPut {
  readonly column: BenchColumn;
  readonly at: Line;
}

/**
 * Writes boxes over as one change, or none of them: the sentence names what cannot be read. A box that is emptied
 * goes back to the house where it was written over, and else is a missing figure; among several, an empty text
 * leaves its box alone.
 */
export function writeBoxes(desk: WriteDesk, changes: readonly BoxChange[]): Result<Change, string> {
  const puts: Put[] = [];
  const refused: string[] = [];
  for (const change of changes) {
    if (change.text.trim() === '' && changes.length > 1) continue;
    const put = readChange(desk, change);
    if (put.ok) puts.push(put.value);
    else refused.push(put.fault);
  }
  if (refused.length > 0) return failed(sayRefused(refused));
  const cycle = cycleOf(desk, puts);
  if (cycle) return failed(cycle);
  return ok(localChange(desk.records, desk.job, puts, labelOf(desk, puts)));
}

function readChange(
  { source, faces, read }: WriteDesk,
  { row, column: key, text: typed }: BoxChange,
): Result<Put, string> {
  const column = source.columns.find((each) => each.key === key);
  const line = read.byName.get(row);
  if (!column || !line) return failed(`Nothing called ${row} in ${key}.`);
  const where = `${faces.of(row)?.label ?? row}, ${calledOf(column)}`;
  if (hasTwoReadings(typed, line, faces.display)) {
    return failed(`${where}: ${sayBoxFault({ kind: 'two-readings', text: typed.trim() }, row)}`);
  }
  const text = writtenText(typed, line, faces.display);
  const put = { size: column.size, line: row, column, at: line };
  if (text === '' && column.locals.has(row)) return ok({ ...put, text: undefined });
  const reading = read.reader.read(line, text);
  if (reading.is === 'faulty') return failed(`${where}: ${sayBoxFault(reading.fault, row, calledByWords(faces))}`);
  return ok({ ...put, text });
}

function sayRefused([first = '', ...more]: readonly string[]): string {
  if (more.length === 0) return first;
  const others = more.slice(0, 3).map((each) => each.slice(0, each.indexOf(':')));
  const rest = more.length > 3 ? ` and ${more.length - 3} more` : '';
  return `${first} Nor can be read: ${others.join('; ')}${rest}. Nothing was written.`;
}

/** A figure cannot make a cycle; rules are followed in each size they are written in. */
function cycleOf({ read, source }: WriteDesk, puts: readonly Put[]): string | undefined {
  const rules = puts.filter(({ at, text }) => text !== undefined && read.reader.read(at, text).is === 'rule');
  for (const [column, inColumn] of Map.groupBy(rules, (put) => put.column)) {
    const locals = new Map(column.locals);
    for (const put of puts) if (put.column === column && put.text !== undefined) locals.set(put.line, put.text);
    const resolve = textResolver({ ...column, locals }, source.job);
    const cycle = findCycle(
      read,
      (line) => resolve(line).text,
      inColumn.map((put) => put.line),
    );
    if (cycle) return sayBoxCause({ why: 'loop', cycle }, cycle[0] ?? '');
  }
  return undefined;
}

function labelOf({ faces, source }: WriteDesk, puts: readonly Put[]): string {
  const [put] = puts;
  if (!put || puts.length > 1) return `${puts.length} boxes of ${source.title}`;
  const where = `${calledLine(faces, put.line)} of ${calledOf(put.column)}`;
  if (put.text === undefined) return `${where} back to house`;
  return `${where} to ${textInLabel(put.text, put.at, faces.display)}`.slice(0, 300);
}

/**
 * Takes boxes back to the house. Where none of them has a value of its own, values for the whole job are
 * taken back instead.
 */
export function clearBoxes(desk: WriteDesk, places: readonly BoxPlace[]): Result<Change, string> {
  const { source, records, job } = desk;
  const columns = new Map(source.columns.map((column) => [column.key, column]));
  const locals = places.flatMap(({ row, column: key }) => {
    const column = columns.get(key);
    return column?.locals.has(row) ? [{ size: column.size, line: row, text: undefined, called: calledOf(column) }] : [];
  });
  const lines = [...new Set(places.map((place) => place.row))].filter((row) => source.job.has(row));
  const whole = lines.map((line) => ({ size: undefined, line, text: undefined, called: 'the whole job' }));
  const puts = locals.length > 0 ? locals : whole;
  const [put] = puts;
  if (!put) return failed('This follows the house already.');
  const one = `${calledLine(desk.faces, put.line)} of ${put.called} back to house`;
  return ok(localChange(records, job, puts, puts.length === 1 ? one : `${puts.length} boxes back to house`));
}

/** Makes what stands in a box the value for the whole job; what stood in this size alone goes. */
export function writeWhole(desk: WriteDesk, { row, column: key }: BoxPlace, typed?: string): Result<Change, string> {
  const { source, faces, read, records, job } = desk;
  const column = source.columns.find((each) => each.key === key);
  const line = read.byName.get(row);
  const text = typed === undefined ? column?.locals.get(row) : line && writtenText(typed, line, faces.display);
  if (!column || !line || text === undefined) return failed(writeFirst);
  const refused = wholeRefusal(desk, line, text);
  if (refused !== undefined) return failed(refused);
  const label = `${calledLine(faces, row)} of the whole job to ${textInLabel(text, line, faces.display)}`;
  const puts = [
    { size: undefined, line: row, text, ...goesAlong(column, row, text) },
    { size: column.size, line: row, text: undefined },
  ];
  return ok(localChange(records, job, puts, label.slice(0, 300)));
}

/** The note goes along with a value, and so does who asked for it while it is the same text. */
function goesAlong({ written }: BenchColumn, row: string, text: string): Pick<LocalPut, 'note' | 'by'> {
  const from = written.get(row);
  return { note: from?.note ?? '', by: from?.text === text ? from.by : 'us' };
}

const writeFirst = 'Write a value in this box first; then it can hold for the whole job.';

function wholeRefusal(desk: WriteDesk, line: Line, text: string): string | undefined {
  const reading = desk.read.reader.read(line, text);
  if (reading.is === 'faulty') return sayBoxFault(reading.fault, line.name, calledByWords(desk.faces));
  const cycle = reading.is === 'rule' ? wholeCycle(desk, line, text) : undefined;
  return cycle && sayBoxCause({ why: 'loop', cycle }, line.name);
}

function wholeCycle({ source, read }: WriteDesk, { name }: Line, text: string): readonly string[] | undefined {
  const whole = new Map([...source.job, [name, text]]);
  for (const column of source.columns) {
    const resolve = textResolver(column, whole);
    const cycle = findCycle(read, (line) => resolve(line).text, [name]);
    if (cycle) return cycle;
  }
  return undefined;
}

/** What a box is written over with. */
export interface WrittenOver {
  /** `undefined` where it holds for the whole job. */
  readonly size: string | undefined;
  readonly text: string;
  /** `litter depth of T07`. */
  readonly where: string;
}

/** What a box is written over with, in its size or else for the whole job. */
export function writtenOver({ source, faces }: WriteDesk, { row, column: key }: BoxPlace): WrittenOver | undefined {
  const column = source.columns.find((each) => each.key === key);
  const local = column?.written.get(row);
  const written = local ?? source.whole.get(row);
  if (!column || !written) return undefined;
  const where = `${calledLine(faces, row)} of ${local ? calledOf(column) : 'the whole job'}`;
  return { size: local && column.size, text: written.text, where };
}

/** Writes the note of a box that is written over. */
export function writeNote(desk: WriteDesk, place: BoxPlace, note: string): Result<Change, string> {
  const written = writtenOver(desk, place);
  if (!written) return failed('A note stands beside a local value: write one first.');
  const { size, text, where } = written;
  return ok(localChange(desk.records, desk.job, [{ size, line: place.row, text, note }], `note on ${where}`));
}
