import { readLines, type ReadLines } from '#shared-calc/bench/find-cycle.ts';
import { joinLines } from '#shared-calc/bench/column-lines.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import type { Derived } from '#shared-calc/derive/derived.ts';
import { findJob } from '#shared-calc/jobs/find-job.ts';
import type { JobFault } from '#shared-calc/jobs/job-fault.ts';
import { keysOf, type JobSheet, type SheetColumn, type Written } from '#shared-calc/jobs/job-sheet.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { calledOf } from '#shared-calc/recipe/column.ts';
import { inSentence, lineLabel } from '#shared-calc/recipe/line-label.ts';
import type { Job, Line, Records } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { nearestName } from '#shared-calc/rule/nearest.ts';

/** A job with its sizes and lines, as its cell acts read them. */
export interface JobCells {
  readonly records: Records;
  readonly job: Job;
  readonly sheet: JobSheet;
  /** The usual lines. */
  readonly read: ReadLines;
  /** The lines of a size. */
  readonly readOf: (column: Pick<SheetColumn, 'lines'>) => ReadLines;
  readonly display: Display;
  readonly today: Day;
}

export function jobCells(
  { records, today, display, sheet, job: worked, lines }: Derived,
  id: string,
): Result<JobCells, JobFault> {
  const job = findJob(records, id);
  if (!job.ok) return job;
  const known = sheet(id) ?? { recipe: job.value.recipe, columns: [], whole: new Map(), oneOffs: [] };
  const usual = worked(id)?.lines ?? lines(job.value.recipe);
  const readOf: JobCells['readOf'] = (column) => readLines(column.lines ?? usual);
  return ok({ records, job: job.value, sheet: known, read: readLines(usual), readOf, display, today });
}

export interface Cell {
  readonly column: SheetColumn;
  readonly line: Line;
  /** The lines of its size. */
  readonly read: ReadLines;
}

interface CellName {
  readonly column: string;
  readonly line: string;
}

/** Finds a cell by the key of its size and the name of its line. */
export function findCell(cells: JobCells, { column: key, line: name }: CellName): Result<Cell, JobFault> {
  const column = findColumn(cells, key);
  if (!column.ok) return column;
  const read = cells.readOf(column.value);
  const { byName } = read;
  const line = byName.get(name);
  if (line) return ok({ column: column.value, line, read });
  const other = joinLines(cells.sheet.columns.map((each) => cells.readOf(each).lines)).find(
    (each) => each.name === name,
  );
  const { recipe = cells.sheet.recipe } = column.value;
  if (other) return failed({ kind: 'not-in-recipe', line: lineLabel(other), size: calledOf(column.value), recipe });
  const near = nearestName(name, byName.keys());
  return failed({ kind: 'no-line', line: name, ...(near !== undefined && { near }) });
}

export function findColumn({ sheet }: JobCells, key: string): Result<SheetColumn, JobFault> {
  const column = sheet.columns.find((each) => each.key === key);
  return column ? ok(column) : failed({ kind: 'no-size', size: key, sizes: keysOf(sheet) });
}

/** What a cell is written over with, and where it is written. */
export interface CellWritten extends Written {
  /** The id of the size; `undefined` for the whole job. */
  readonly size: string | undefined;
  /** "T07", "the whole job". */
  readonly called: string;
}

/** What a cell is written over with, in its own size or for the whole job. */
export function writtenIn({ sheet }: JobCells, { column, line }: Cell): CellWritten | undefined {
  const local = column.locals.get(line.name);
  if (local) return { ...local, size: column.size, called: calledOf(column) };
  const whole = sheet.whole.get(line.name);
  return whole && { ...whole, size: undefined, called: 'the whole job' };
}

/** A line within a sentence: "litter depth". */
export function lineWords(line: Line): string {
  return inSentence(lineLabel(line));
}
