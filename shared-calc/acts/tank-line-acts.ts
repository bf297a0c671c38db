import { z } from 'zod';
import { findJob } from '#shared-calc/jobs/find-job.ts';
import { isSold } from '#shared-calc/jobs/sold-house.ts';
import { calledOf } from '#shared-calc/recipe/column.ts';
import { inSentence, lineLabel } from '#shared-calc/recipe/line-label.ts';
import { linesFor } from '#shared-calc/recipe/lines-of.ts';
import { textInLabel, writtenText } from '#shared-calc/recipe/typed-text.ts';
import { withLineFor, withoutTanks } from '#shared-calc/recipe/write-lines.ts';
import { squashChanges, type Change } from '#shared-calc/records/change.ts';
import { diffRecords } from '#shared-calc/records/diff-records.ts';
import { displayOf } from '#shared-calc/records/display-of.ts';
import type { Line, Records } from '#shared-calc/records/records.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { act } from './act.ts';
import type { ActFault } from './act-fault.ts';
import { familyFault } from './family-check.ts';
import { findLine } from './find-record.ts';
import { findCell, jobCells, writtenIn } from './job-cells.ts';
import { localChange } from './local-change.ts';
import { lineWithHouseText } from './recipe-acts.ts';

const WriteLineFor = z.strictObject({
  line: z.string().describe('The id of a line, such as H1.litter.'),
  tanks: z.array(z.string()).min(1),
  text: z.string().nullable().describe('As it is typed; null: as for the other tanks again.'),
});

export const writeLineFor = act<z.infer<typeof WriteLineFor>>({
  name: 'writeLineFor',
  says: "Writes a line's figure or rule in its house recipe for some tanks alone.",
  input: WriteLineFor,
  run: ({ records }, { line: id, tanks, text: typed }) => {
    const line = findLine(records, id);
    if (!line.ok) return line;
    const unknown = tanks.find((tank) => !records.tank.has(tank));
    if (unknown !== undefined) return failed({ kind: 'no-tank-of-family', tank: unknown });
    if (typed === null) return backToUsual(records, line.value, tanks);
    const display = displayOf(workshopOf(records));
    const text = writtenText(typed, line.value, display);
    if (!text.ok) return failed({ kind: 'unreadable', line: line.value.name, text: typed.trim(), fault: text.fault });
    return writtenFor(records, line.value, { tanks, text: text.value });
  },
});

function backToUsual(records: Records, line: Line, tanks: readonly string[]): Result<Change, ActFault> {
  const after = withoutTanks(records, { recipe: line.recipe, line: line.id }, tanks);
  const change = diffRecords(`${inSentence(lineLabel(line))} of ${tanks.join(', ')} as the others`, records, after);
  return change.updated.length + change.removed.length === 0
    ? failed({ kind: 'nothing-written', what: 'back' })
    : ok(change);
}

interface ForTanks {
  readonly tanks: readonly string[];
  readonly text: string;
  readonly note?: string;
}

function writtenFor(records: Records, line: Line, { tanks, text, note }: ForTanks): Result<Change, ActFault> {
  if (line.role === 'tank') return failed({ kind: 'tank-measure', line: line.name });
  const here = linesFor(records, line.recipe, tanks[0] ?? '').find(({ id }) => id === line.id) ?? line;
  const next = lineWithHouseText(records, here, text);
  if (!next.ok) return next;
  const after = withLineFor(records, note === undefined ? next.value : { ...next.value, note }, tanks);
  const fault = familyFault(records, after, line);
  if (fault) return failed(fault);
  const said = textInLabel(text, line, displayOf(workshopOf(records)));
  const label = `${inSentence(lineLabel(line))} always ${said} for ${tanks.join(', ')}`;
  return ok(diffRecords(label.slice(0, 300), records, after));
}

const KeepForTank = z.strictObject({
  job: z.string(),
  column: z.string().describe('The size by its key: T07, or T07#2.'),
  line: z.string(),
});

export const keepForTank = act<z.infer<typeof KeepForTank>>({
  name: 'keepForTank',
  says: 'Makes the value of a cell hold for its tank in every job: the recipe keeps it, and the cell follows the house again.',
  input: KeepForTank,
  run: (derived, { job: id, ...name }) => {
    const { records } = derived;
    const job = findJob(records, id);
    const cells = jobCells(derived, id);
    if (!job.ok) return job;
    if (!cells.ok) return cells;
    const cell = findCell(cells.value, name);
    if (!cell.ok) return cell;
    const written = writtenIn(cells.value, cell.value);
    if (!written) return failed({ kind: 'nothing-written', what: 'tank' });
    const line = findLine(records, cell.value.line.id);
    if (!line.ok) return line;
    const { tank } = cell.value.column;
    const { text, note, size } = written;
    const kept = writtenFor(records, line.value, { tanks: [tank.id], text, ...(note !== '' && { note }) });
    if (!kept.ok || isSold(records, id) || size === undefined) return kept;
    const back = localChange(records, id, [{ size, line: line.value.name, text: undefined }], '');
    return ok(squashChanges(`${kept.value.label}, from ${id} ${calledOf(cell.value.column)}`, [kept.value, back]));
  },
});
