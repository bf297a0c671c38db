import { z } from 'zod';
import { houseLessons, plantLesson } from '#shared-calc/derive/house-lessons.ts';
import { PLANTS_LOST } from '#shared-calc/derive/job-took.ts';
import { watchLesson } from '#shared-calc/derive/watch-lesson.ts';
import { findJob, freeId } from '#shared-calc/jobs/find-job.ts';
import { allLines } from '#shared-calc/jobs/worked-job.ts';
import { SIGNED, watchLines, watchMeasures, watchOf } from '#shared-calc/prepare/saved-watch.ts';
import { readWatchLog } from '#shared-calc/prepare/watch-log.ts';
import { LAST_JOBS } from '#shared-calc/prepare/teach-house.ts';
import { watchReport, type WatchBand } from '#shared-calc/prepare/watch.ts';
import { shownUnit, type Display } from '#shared-calc/quantity/shown-unit.ts';
import { toBase, unitOf } from '#shared-calc/quantity/unit.ts';
import { givenWords } from '#shared-calc/prepare/given-words.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import { inSentence, lineLabel } from '#shared-calc/recipe/line-label.ts';
import { added, emptyChange, updated } from '#shared-calc/records/change.ts';
import type { Actual, Line } from '#shared-calc/records/records.ts';
import { failed, ok } from '#shared-calc/result.ts';
import { act } from './act.ts';
import { findLine } from './find-record.ts';
import { linesWritten } from './line-changes.ts';
import { Day } from './inputs.ts';
import { localChange } from './local-change.ts';
import { findColumn, jobCells } from './job-cells.ts';
import { recordAdded, recordChanged, recordRemoved } from './record-changes.ts';

const KeepWatch = z.strictObject({
  job: z.string(),
  column: z.string().describe('The size by its key: T07, or T07#2.'),
  readings: z.string().describe('A row a reading: time, degC and humidity in percent, such as 14:30 24.5 85.'),
  by: z.string().describe('Who signs them.'),
});

const LONGEST = 2_000;

/** The stored figures do not depend on a band. */
const anyBand: WatchBand = { lowestC: 0, highestC: 0, driest: 0, dampest: 0 };

export const keepWatch = act<z.infer<typeof KeepWatch>>({
  name: 'keepWatch',
  says: 'Keeps the readings of a watch with a size, signed: its hours, the most and the least; one kept before goes.',
  input: KeepWatch,
  run: (derived, input) => {
    const cells = jobCells(derived, input.job);
    if (!cells.ok) return cells;
    const column = findColumn(cells.value, input.column);
    if (!column.ok) return column;
    const { size } = column.value;
    const by = input.by.trim();
    if (by === '') return failed({ kind: 'nobody-signs' });
    const log = readWatchLog(input.readings);
    if (!log.ok) return failed({ kind: 'bad-log', rows: log.fault });
    const text = tidy(input.readings);
    if (text.length + by.length + SIGNED.length > LONGEST) return failed({ kind: 'too-many-readings' });
    const report = watchReport(log.value, anyBand);
    const taken = watchLines.map((line): Actual => ({
      id: `${size}.${line}`,
      job: input.job,
      size,
      line,
      value: cleanNoise(watchMeasures[line].of(report)),
      unit: watchMeasures[line].unit,
      on: derived.today,
      note: line === 'watch_hours' ? `${SIGNED}${by}\n${text}` : `${SIGNED}${by}`,
    }));
    const existing = new Map(watchOf(derived.records, size).map((record) => [record.id, record]));
    return ok({
      ...emptyChange(`${input.job}: watch of ${size}, signed by ${by}`),
      added: taken.filter(({ id }) => !existing.has(id)).map((record) => added('actual', record)),
      updated: taken.flatMap((record) => {
        const before = existing.get(record.id);
        return before ? [updated('actual', before, record)] : [];
      }),
    });
  },
});

/** Drops what a reader ignores: empty rows, repeated spaces. */
function tidy(text: string): string {
  return text
    .split(/\r\n|\r|\n/)
    .map((row) => row.trim().replaceAll(/[ \t]+/g, ' '))
    .filter((row) => row !== '')
    .join('\n');
}

const TeachFromWatch = z.strictObject({
  job: z.string(),
  column: z.string().describe('The size by its key: T07, or T07#2.'),
  factor: z.enum(['air', 'damp', 'warm']).describe('Air exchange, damp passed or warming by lamps.'),
  for: z.enum(['house', 'tank']).describe('The house recipe, or this tank only.'),
  lostMlPerDay: z.number().min(0).max(100_000).optional().describe('Water put in less drained; needed for the air.'),
});

export const teachFromWatch = act<z.infer<typeof TeachFromWatch>>({
  name: 'teachFromWatch',
  says: 'Sets a guess of air, damp or warming by the kept watch of a size, for the house or for this tank only.',
  input: TeachFromWatch,
  run: (derived, { job, column: key, factor, for: whom, lostMlPerDay }) => {
    const cells = jobCells(derived, job);
    if (!cells.ok) return cells;
    const column = findColumn(cells.value, key);
    if (!column.ok) return column;
    const lesson = watchLesson(derived, { job, column: key, factor, lostMl: lostMlPerDay });
    if (!lesson.ok) return lesson;
    const { line, likely, least, most } = lesson.value;
    if (whom === 'tank') {
      const text = `${likely} (${least} to ${most})`;
      const note = `measured by the watch of ${key}, ${derived.today}`;
      const written = [{ size: column.value.size, line: line.name, text, note }];
      return ok(localChange(derived.records, job, written, `${key} taught: ${line.name} to ${text}`));
    }
    const from = findLine(derived.records, line.id);
    if (!from.ok) return from;
    const measured = { source: 'measured', sourceNote: `${derived.today}, watch of ${key} in ${job}` } as const;
    const to = { ...from.value, text: String(likely), least, most, ...measured };
    return ok(linesWritten(derived.records, `house taught: ${line.name} to ${likely}`, [to]));
  },
});

const WriteTook = z.strictObject({
  job: z.string(),
  line: z.string().describe(`The name of a line, or ${PLANTS_LOST}.`),
  value: z.number().min(0).max(1_000_000).nullable().describe("In the line's own unit; null: not written down."),
  on: Day.optional().describe('Left out: today.'),
});

export const writeTook = act<z.infer<typeof WriteTook>>({
  name: 'writeTook',
  says: 'Writes down what a job took of a line, for all its builds together.',
  input: WriteTook,
  run: ({ records, today, display, job: jobOf }, { job: id, line: name, value, on = today }) => {
    const job = findJob(records, id);
    if (!job.ok) return job;
    const worked = jobOf(id);
    const line = tookLines(worked ? allLines(worked) : []).get(name);
    if (!line) return failed({ kind: 'no-line', line: name });
    const label = `${id}: ${inSentence(line.label)}`;
    const before = [...records.actual.values()].find(
      (each) => each.job === id && each.line === name && each.size === undefined,
    );
    if (value === null)
      return ok(before ? recordRemoved(`${label} not written down`, 'actual', before) : emptyChange(label));
    const { unit } = line;
    const took = `${label} took ${tookWords(value, unit, display)}`;
    if (before) return ok(recordChanged(took, 'actual', { from: before, to: { ...before, value, unit, on } }));
    const record = { id: freeId(`${id}.${name}`, records.actual), job: id, line: name, value, unit, on, note: '' };
    return ok(recordAdded(took, 'actual', record));
  },
});

/** `13 gal`: an amount in the workshop's units; unrounded where it is in its own. */
function tookWords(value: number, unit: string, display: Display): string {
  if (shownUnit(unit, display) === unit) return `${value} ${unit}`;
  return givenWords(toBase(value, unitOf(unit)), unit, display).replace('\u00a0', ' ');
}

/** What can be recorded of a job, by name: the lines of its recipe, and plants lost. */
function tookLines(lines: readonly Line[]): ReadonlyMap<string, { readonly label: string; readonly unit: string }> {
  return new Map([
    ...lines.map((line) => [line.name, { label: lineLabel(line), unit: line.unit }] as const),
    [PLANTS_LOST, { label: 'Plants lost', unit: 'each' }],
  ]);
}

const TeachHouse = z.strictObject({ recipe: z.string(), line: z.string().describe('The name of a line.') });

export const teachHouse = act<z.infer<typeof TeachHouse>>({
  name: 'teachHouse',
  says: 'Gives a line of the house what the last five jobs measured.',
  input: TeachHouse,
  run: (derived, { recipe, line: name }) => {
    const line = derived.lines(recipe).find((each) => each.name === name);
    if (!line) return failed({ kind: 'no-line', line: name });
    const lesson = houseLessons(derived, { recipe, reference: '' }).find((each) => each.line === name);
    if (lesson?.proposed === undefined) return failed({ kind: 'no-lesson', label: lineLabel(line) });
    const measured = { source: 'measured', sourceNote: `${derived.today}, the last ${LAST_JOBS} jobs` } as const;
    const to = { ...line, text: lesson.proposed, ...measured };
    return ok(linesWritten(derived.records, `house taught: ${name} to ${lesson.proposed}`, [to]));
  },
});

export const teachPlantLoss = act<Record<string, never>>({
  name: 'teachPlantLoss',
  says: 'Has the workshop reckon with the plants that the last five jobs lost.',
  input: z.strictObject({}),
  run: (derived) => {
    const { workshop } = derived;
    const share = plantLesson(derived)?.proposed;
    if (share === undefined) return failed({ kind: 'no-lesson', label: 'Plants that fail' });
    const label = `house taught: ${Math.round(share * 1000) / 10} % for plants that fail`;
    return ok(recordChanged(label, 'workshop', { from: workshop, to: { ...workshop, plantLossShare: share } }));
  },
});
