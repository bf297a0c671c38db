import { z } from 'zod';
import { findCycle } from '#shared-calc/bench/find-cycle.ts';
import { textsOf } from '#shared-calc/jobs/job-sheet.ts';
import { calledOf } from '#shared-calc/recipe/column.ts';
import { lineLabel } from '#shared-calc/recipe/line-label.ts';
import { lineFor } from '#shared-calc/recipe/lines-by-use.ts';
import { textResolver } from '#shared-calc/recipe/resolve-box.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { textInLabel, writtenText } from '#shared-calc/recipe/typed-text.ts';
import { squashChanges, type Change } from '#shared-calc/records/change.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { act, type Act } from './act.ts';
import type { ActFault, RefusedCell } from './act-fault.ts';
import {
  findCell,
  findColumn,
  jobCells,
  lineWords,
  writtenIn,
  type Cell,
  type CellWritten,
  type JobCells,
} from './job-cells.ts';
import { localChange, type LocalWrite } from './local-change.ts';
import { findLine } from './find-record.ts';
import { editsIn, numbered } from './house-log.ts';
import { linesWritten } from './line-changes.ts';
import { houseLabel, houseText } from './recipe-acts.ts';
import { isSold } from '#shared-calc/jobs/sold-house.ts';

const Job = z.string();
const Place = { column: z.string().describe('The size by its key: T07, or T07#2.'), line: z.string() };
const Typed = z.string().describe('As it is typed in the cell: a bare number has the unit that the line is shown in.');

const LABEL_LENGTH = 300;

type Run<I> = (cells: JobCells, input: I) => Result<Change, ActFault>;

function cellsAct<I extends { readonly job: string }>(parts: {
  readonly name: string;
  readonly says: string;
  readonly input: z.ZodType<I>;
  readonly run: Run<I>;
}): Act<I> {
  return act<I>({
    ...parts,
    run: (derived, input) => {
      const cells = jobCells(derived, input.job);
      return cells.ok ? parts.run(cells.value, input) : cells;
    },
  });
}

/** An act on what one cell is written over with. */
function writtenAct<I extends { readonly job: string; readonly column: string; readonly line: string }>(parts: {
  readonly name: string;
  readonly says: string;
  readonly input: z.ZodType<I>;
  /** The refusal where the cell is not written over. */
  readonly without: Extract<ActFault, { readonly kind: 'nothing-written' }>['what'];
  readonly run: (
    on: { readonly cells: JobCells; readonly cell: Cell; readonly written: CellWritten },
    input: I,
  ) => Result<Change, ActFault>;
}): Act<I> {
  return cellsAct<I>({
    ...parts,
    run: (cells, input) => {
      const cell = findCell(cells, input);
      if (!cell.ok) return cell;
      const written = writtenIn(cells, cell.value);
      if (!written) return failed({ kind: 'nothing-written', what: parts.without });
      return parts.run({ cells, cell: cell.value, written }, input);
    },
  });
}

const WriteCells = z.strictObject({ job: Job, cells: z.array(z.strictObject({ ...Place, text: Typed })).min(1) });

interface CellWrite extends LocalWrite {
  readonly cell: Cell;
}

export const writeCells = cellsAct<z.infer<typeof WriteCells>>({
  name: 'writeCells',
  says: 'Writes cells of a job over as they are typed, all of them or none; an emptied cell goes back to the house.',
  input: WriteCells,
  run: (cells, { cells: typed }) => cellsWritten(cells, typed),
});

interface TypedCell {
  readonly column: string;
  readonly line: string;
  readonly text: string;
}

/**
 * An emptied cell follows the house again where it was written over; otherwise it has no figure yet. In a batch, an
 * empty text leaves its cell unchanged.
 */
function cellsWritten(cells: JobCells, typed: readonly TypedCell[]): Result<Change, ActFault> {
  const puts: CellWrite[] = [];
  const refused: RefusedCell[] = [];
  for (const each of typed) {
    if (each.text.trim() === '' && typed.length > 1) continue;
    const cell = findCell(cells, each);
    if (!cell.ok) return cell;
    const put = readCell(cells, cell.value, each.text);
    if (put.ok) puts.push(put.value);
    else refused.push(put.fault);
  }
  if (refused.length > 0) return failed({ kind: 'cells-refused', cells: refused });
  const cycle = cycleOf(cells, puts);
  if (cycle) return failed(cycle);
  return ok(localChange(cells.records, cells.job.id, puts, labelOf(cells, puts)));
}

function readCell({ display }: JobCells, cell: Cell, typed: string): Result<CellWrite, RefusedCell> {
  const { column, line, read } = cell;
  const refusedFor = (fault: RefusedCell['fault']) =>
    failed({ line: line.name, label: lineLabel(line), size: calledOf(column), fault });
  const written = writtenText(typed, line, display);
  if (!written.ok) return refusedFor(written.fault);
  const text = written.value;
  const put = { size: column.size, line: line.name, cell };
  if (text === '' && column.locals.has(line.name)) return ok({ ...put, text: undefined });
  const reading = read.reader.read(line, text);
  return reading.is === 'faulty' ? refusedFor(reading.fault) : ok({ ...put, text });
}

/** A figure cannot make a cycle; rules are followed in each size they are written in. */
function cycleOf({ sheet, readOf }: JobCells, puts: readonly CellWrite[]): ActFault | undefined {
  const isRule = ({ cell, text }: CellWrite) =>
    text !== undefined && cell.read.reader.read(cell.line, text).is === 'rule';
  const rules = puts.filter(isRule);
  for (const [column, inColumn] of Map.groupBy(rules, ({ cell }) => cell.column)) {
    const locals = new Map(textsOf(column.locals));
    for (const { cell, line, text } of puts) if (cell.column === column && text !== undefined) locals.set(line, text);
    const resolve = textResolver({ ...column, locals }, textsOf(sheet.whole));
    const through = inColumn.map(({ line }) => line);
    const cycle = findCycle(readOf(column), (line) => resolve(line).text, through);
    if (cycle) return { kind: 'loop', line: cycle[0] ?? '', text: '', cycle };
  }
  return undefined;
}

function labelOf({ job, display }: JobCells, puts: readonly CellWrite[]): string {
  const [put] = puts;
  if (!put || puts.length > 1) return `${puts.length} boxes of ${job.title}`;
  const { line, column } = put.cell;
  const where = `${lineWords(line)} of ${calledOf(column)}`;
  if (put.text === undefined) return `${where} back to house`;
  return `${where} to ${textInLabel(put.text, line, display)}`.slice(0, LABEL_LENGTH);
}

const BackToHouse = z.strictObject({ job: Job, cells: z.array(z.strictObject(Place)).min(1) });

export const backToHouse = cellsAct<z.infer<typeof BackToHouse>>({
  name: 'backToHouse',
  says: 'Takes cells back to the house; where none has a value of its own, values of the whole job go instead.',
  input: BackToHouse,
  run: (cells, { cells: named }) => {
    const found: Cell[] = [];
    for (const name of named) {
      const cell = findCell(cells, name);
      if (!cell.ok) return cell;
      found.push(cell.value);
    }
    return cellsCleared(cells, found);
  },
});

function cellsCleared({ records, job, sheet }: JobCells, cells: readonly Cell[]): Result<Change, ActFault> {
  const locals = cells
    .filter(({ column, line }) => column.locals.has(line.name))
    .map(({ column, line }) => ({ line, size: column.size, called: calledOf(column) }));
  const whole = [...new Set(cells.map(({ line }) => line))]
    .filter((line) => sheet.whole.has(line.name))
    .map((line) => ({ line, size: undefined, called: 'the whole job' }));
  const gone = locals.length > 0 ? locals : whole;
  const [first] = gone;
  if (!first) return failed({ kind: 'nothing-written', what: 'back' });
  const puts = gone.map(({ line, size }) => ({ size, line: line.name, text: undefined }));
  const one = `${lineWords(first.line)} of ${first.called} back to house`;
  return ok(localChange(records, job.id, puts, gone.length === 1 ? one : `${gone.length} boxes back to house`));
}

const SetKit = z.strictObject({ job: Job, column: Place.column, kit: z.string() });

export const setKit = cellsAct<z.infer<typeof SetKit>>({
  name: 'setKit',
  says: 'Gives a size another kit level; the one that the house or the job has takes the local one away.',
  input: SetKit,
  run: (cells, { column, kit }) => {
    const size = findColumn(cells, column);
    if (!size.ok) return size;
    const line = lineFor(cells.readOf(size.value).lines, 'kit');
    if (!line) return failed({ kind: 'not-given', use: 'kit' });
    const usual = cells.sheet.whole.get(line.name)?.text ?? line.text;
    if (usual !== kit) return cellsWritten(cells, [{ column, line: line.name, text: kit }]);
    const cell = findCell(cells, { column, line: line.name });
    return cell.ok ? cellsCleared(cells, [cell.value]) : cell;
  },
});

const HoldForJob = z.strictObject({ job: Job, ...Place, text: Typed.optional() });

export const holdForJob = cellsAct<z.infer<typeof HoldForJob>>({
  name: 'holdForJob',
  says: 'Makes the value of a cell, or a text, hold for the whole job; what stood in this size alone goes.',
  input: HoldForJob,
  run: (cells, { text: typed, ...name }) => {
    const cell = findCell(cells, name);
    if (!cell.ok) return cell;
    const { column, line } = cell.value;
    const local = column.locals.get(line.name);
    const written = typed === undefined ? storedHere(local) : typedText(typed, line, cells.display);
    if (!written.ok) return written;
    const text = written.value;
    const fault = wholeFault(cells, line, text);
    if (fault) return failed(fault);
    const label = `${lineWords(line)} of the whole job to ${textInLabel(text, line, cells.display)}`;
    const puts: readonly LocalWrite[] = [
      { size: undefined, line: line.name, text, note: local?.note ?? '', by: local?.text === text ? local.by : 'us' },
      { size: column.size, line: line.name, text: undefined },
    ];
    return ok(localChange(cells.records, cells.job.id, puts, label.slice(0, LABEL_LENGTH)));
  },
});

function storedHere(local: { readonly text: string } | undefined): Result<string, ActFault> {
  return local ? ok(local.text) : failed({ kind: 'nothing-written', what: 'whole job' });
}

function typedText(typed: string, line: Line, display: Display): Result<string, ActFault> {
  const written = writtenText(typed, line, display);
  return written.ok ? written : failed({ kind: 'unreadable', line: line.name, text: typed, fault: written.fault });
}

/** In every size whose recipe has the line. */
function wholeFault({ sheet, readOf }: JobCells, { name }: Line, text: string): ActFault | undefined {
  const whole = new Map([...textsOf(sheet.whole), [name, text]]);
  for (const column of sheet.columns) {
    const read = readOf(column);
    const line = read.byName.get(name);
    const reading = line && read.reader.read(line, text);
    if (reading?.is === 'faulty') return { kind: 'unreadable', line: name, text, fault: reading.fault };
    if (reading?.is !== 'rule') continue;
    const resolve = textResolver({ ...column, locals: textsOf(column.locals) }, whole);
    const cycle = findCycle(read, (each) => resolve(each).text, [name]);
    if (cycle) return { kind: 'loop', line: name, text, cycle };
  }
  return undefined;
}

const NoteCell = z.strictObject({ job: Job, ...Place, note: z.string().max(2_000) });

export const noteCell = writtenAct<z.infer<typeof NoteCell>>({
  name: 'noteCell',
  says: 'Writes the note beside what a cell is written over with.',
  input: NoteCell,
  without: 'note',
  run: ({ cells, cell: { line }, written: { size, text, called } }, { note }) => {
    const label = `note on ${lineWords(line)} of ${called}`;
    return ok(localChange(cells.records, cells.job.id, [{ size, line: line.name, text, note }], label));
  },
});

const SayWhoAsked = z.strictObject({ job: Job, ...Place, by: z.enum(['client', 'us']) });

export const sayWhoAsked = writtenAct<z.infer<typeof SayWhoAsked>>({
  name: 'sayWhoAsked',
  says: 'Says who asked for what a cell is written over with; What changed tells it.',
  input: SayWhoAsked,
  without: 'asker',
  run: ({ cells, cell: { line }, written: { size, text, called } }, { by }) => {
    const label = `${lineWords(line)} of ${called}, asked for by ${by === 'client' ? 'the client' : 'us'}`;
    return ok(localChange(cells.records, cells.job.id, [{ size, line: line.name, text, by }], label));
  },
});

const SendToHouse = z.strictObject({ job: Job, ...Place });

/** The recipe gets the text and its note, and the cell follows the house again. */
export const sendToHouse = writtenAct<z.infer<typeof SendToHouse>>({
  name: 'sendToHouse',
  says: "Makes the value of a cell the house's own: the recipe takes it, and the cell follows the house again.",
  input: SendToHouse,
  without: 'back',
  run: ({ cells, cell: { line }, written: { size, text, note } }) => {
    const { records, job, today } = cells;
    if (line.role === 'tank') return failed({ kind: 'tank-measure', line: line.name });
    // A sold job stands on lines of its own.
    const ofHouse = findLine(records, line.id);
    if (!ofHouse.ok) return ofHouse;
    const house = houseText(records, ofHouse.value, text);
    if (!house.ok) return house;
    const label = houseLabel(ofHouse.value, textInLabel(text, line, cells.display));
    const noted = linesWritten(records, label, [note === '' ? house.value : { ...house.value, note }]);
    const back = isSold(records, job.id) ? [] : [{ size, line: line.name, text: undefined }];
    const entry = { on: today, note, fromJob: job.id, inForceOn: today };
    const edits = editsIn(records, noted).filter(({ how }) => how === undefined);
    const log = {
      ...noted,
      added: [
        ...noted.added,
        ...numbered(
          records,
          edits.map((edit) => ({ ...edit, ...entry })),
        ),
      ],
    };
    return ok(squashChanges(label, [log, localChange(records, job.id, back, '')]));
  },
});
