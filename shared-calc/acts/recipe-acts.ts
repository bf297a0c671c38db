import { headingOf } from '#shared-calc/fields/record-fields.ts';
import { z } from 'zod';
import { boxReader } from '#shared-calc/bench/box-reader.ts';
import { useNames } from '#shared-calc/fields/uses.ts';
import { freeId } from '#shared-calc/jobs/find-job.ts';
import { writtenElsewhere, valuesOver } from '#shared-calc/jobs/job-recipes.ts';
import { linesOf, takenLineIds } from '#shared-calc/recipe/lines-of.ts';
import { isSold } from '#shared-calc/jobs/sold-house.ts';
import { putRecords } from '#shared-calc/jobs/put-records.ts';
import { nameOfLabel } from '#shared-calc/recipe/name-of-label.ts';
import { noLines } from '#shared-calc/recipe/scope.ts';
import { lineNameFault } from '#shared-calc/rule/line-name.ts';
import { inSentence, lineLabel } from '#shared-calc/recipe/line-label.ts';
import { lineIdIn, withDescendants } from '#shared-calc/recipe/family.ts';
import { withLines } from '#shared-calc/recipe/write-lines.ts';
import { splitRange } from '#shared-calc/recipe/range-text.ts';
import type { BoxReading } from '#shared-calc/recipe/read-box.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import { fromBase, unitOf } from '#shared-calc/quantity/unit.ts';
import { textInLabel, writtenText } from '#shared-calc/recipe/typed-text.ts';
import { emptyChange, type Change } from '#shared-calc/records/change.ts';
import { diffRecords } from '#shared-calc/records/diff-records.ts';
import { displayOf } from '#shared-calc/records/display-of.ts';
import { recordKinds, type Line, type Records } from '#shared-calc/records/records.ts';
import { sortKeyBetween } from '#shared-calc/records/sort-key.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { familyFault } from './family-check.ts';
import { act, type Act } from './act.ts';
import type { ActFault } from './act-fault.ts';
import { findLine, findRecord } from './find-record.ts';
import { linesWritten } from './line-changes.ts';
import { renamedIn } from './rename-in-family.ts';
import { needsOf } from './line-breaks.ts';
import { lineFault, nameFault, rangeFault, ringFault } from './line-fault.ts';
import { moveUse as useMoved } from './move-use.ts';
import { recordChanged, withFields } from './record-changes.ts';

const LineId = z.string().describe('The id of a line, such as H1.drainage.');

/** An act on one line of a house recipe, by its id. */
function lineAct<I extends { readonly line: string }>(parts: {
  readonly name: string;
  readonly says: string;
  readonly input: z.ZodType<I>;
  readonly run: (records: Records, line: Line, input: I) => Result<Change, ActFault>;
}): Act<I> {
  return act<I>({
    ...parts,
    run: ({ records }, input) => {
      const line = findLine(records, input.line);
      return line.ok ? parts.run(records, line.value, input) : line;
    },
  });
}

const AddLine = z.strictObject({
  recipe: z.string(),
  after: z.string().optional().describe('The name of the line that it stands after; left out, it is the last.'),
  role: recordKinds.line.shape.role.optional().describe('What it is; left out, a figure of the house.'),
  label: z.string().optional().describe('Its name in words; its name in rules is made of it.'),
});

/** The new line gets its text and other fields in later edits. */
export const addLine = act<z.infer<typeof AddLine>>({
  name: 'addLine',
  says: 'Adds a line without a figure to a house recipe, straight after another or at its end.',
  input: AddLine,
  run: ({ records }, { recipe, ...line }) => {
    const found = findRecord(records, 'recipe', recipe);
    return found.ok ? ok(lineAdded(records, recipe, line)) : found;
  },
});

/** What a line of a role is mostly given in, and called while it has no name in words. */
const usual: Readonly<Record<Line['role'], { readonly unit: string; readonly called: string }>> = {
  tank: { unit: 'mm', called: 'measure' },
  given: { unit: 'mm', called: 'figure' },
  worked: { unit: 'number', called: 'result' },
  need: { unit: 'each', called: 'need' },
  work: { unit: 'min', called: 'work' },
  check: { unit: 'yes_no', called: 'check' },
};

type NewLine = Pick<z.infer<typeof AddLine>, 'after' | 'role' | 'label'>;

function lineAdded(records: Records, recipe: string, { after, role = 'given', label: typed = '' }: NewLine): Change {
  const { unit, called } = usual[role];
  const label = typed.trim();
  const { before, next } = placeAfter(linesOf(records, recipe), after);
  const taken = withDescendants(records, recipe).flatMap((each) => linesOf(records, each));
  const name = freeName(label === '' ? called : label, taken);
  const record: Line = {
    id: freeId(`${recipe}.${name}`, takenLineIds(records, recipe)),
    recipe,
    order: sortKeyBetween(before?.order, next?.order),
    section: before?.section ?? 'Lines',
    name,
    ...(label !== '' && { label }),
    role,
    unit,
    text: '',
    note: '',
    shownFirst: true,
    inset: false,
    perJob: false,
  };
  return {
    ...emptyChange(label === '' ? `new line in ${recipe}` : `${inSentence(label)} added to ${recipe}`),
    added: [{ kind: 'line', record }],
  };
}

/** The lines that a new one stands between: behind the one that is named, or last. */
function placeAfter(lines: readonly Line[], name: string | undefined) {
  const before = lines.find((line) => line.name === name) ?? lines.at(-1);
  return { before, next: before && lines[lines.indexOf(before) + 1] };
}

function freeName(label: string, lines: readonly Line[]): string {
  const names = new Set(lines.map((line) => line.name));
  return nameOfLabel(label, (each) => names.has(each) || lineNameFault(each, noLines.functions) !== undefined);
}

const RenameLine = z.strictObject({ line: LineId, name: z.string() });

export const renameLine = lineAct<z.infer<typeof RenameLine>>({
  name: 'renameLine',
  says: 'Renames a line through every rule, sentence and local value that says its name.',
  input: RenameLine,
  run: (records, line, input) => {
    const name = input.name.trim();
    const parent = records.recipe.get(line.recipe)?.parent;
    if (parent !== undefined && !records.line.has(line.id))
      return failed({ kind: 'inherited-name', line: line.name, recipe: line.recipe, parent });
    for (const recipe of withDescendants(records, line.recipe)) {
      const here = { ...line, id: recipe === line.recipe ? line.id : lineIdIn(recipe, line), name };
      const fault = nameFault(linesOf(records, recipe), here);
      if (fault) return failed(recipe === line.recipe ? fault : { kind: 'in-recipe', recipe, fault });
    }
    return ok(diffRecords(`${line.name} named ${name}`, records, renamedIn(records, line, name)));
  },
});

const MoveLine = z.strictObject({ line: LineId, to: z.enum(['up', 'down']) });

export const moveLine = lineAct<z.infer<typeof MoveLine>>({
  name: 'moveLine',
  says: "Moves a line one place up or down; past its section's edge it goes over into the next section.",
  input: MoveLine,
  run: (records, line, { to }) => {
    const lines = linesOf(records, line.recipe);
    const other = lines[lines.findIndex((each) => each.id === line.id) + (to === 'up' ? -1 : 1)];
    if (!other) return failed({ kind: 'at-the-end', label: lineLabel(line), end: to === 'up' ? 'first' : 'last' });
    const label = `${inSentence(lineLabel(line))} moved ${to}`;
    if (other.section !== line.section) return ok(linesWritten(records, label, [{ ...line, section: other.section }]));
    const places = [
      { ...line, order: other.order },
      { ...other, order: line.order },
    ];
    return ok(linesWritten(records, label, places));
  },
});

const RemoveLine = z.strictObject({
  line: LineId,
  anyway: z.boolean().default(false).describe('Takes it out though rules, jobs or the program read it.'),
});

export const removeLine = lineAct<z.infer<typeof RemoveLine>>({
  name: 'removeLine',
  says: 'Takes a line out of its recipe, with what jobs have written over it; refused while anything needs it.',
  input: RemoveLine,
  run: (records, line, { anyway }) => {
    const by = anyway ? [] : needsOf(records, line);
    if (by.length > 0) return failed({ kind: 'needed', record: { kind: 'line', id: line.id }, by });
    const recipes = new Set(withDescendants(records, line.recipe));
    const locals = [...recipes]
      .flatMap((recipe) => valuesOver(records, recipe))
      .filter(({ line: name, job }) => name === line.name && !isSold(records, job))
      .filter((value) => !writtenElsewhere(records, value, recipes));
    const gone = locals.map(({ id }) => id);
    return ok(
      diffRecords(`${inSentence(lineLabel(line))} removed`, records, {
        ...withLines(records, line.recipe, { gone: [line.id] }),
        localValue: putRecords(records.localValue, [], gone),
      }),
    );
  },
});

const { shape } = recordKinds.line;
const ChangeLine = z.strictObject({
  line: LineId,
  fields: recordKinds.line
    .pick({ section: true, role: true, unit: true, note: true, shownFirst: true, inset: true, perJob: true })
    .extend({
      label: shape.label.nullable(),
      options: shape.options.nullable(),
      low: shape.low.nullable(),
      high: shape.high.nullable(),
      material: shape.material.nullable(),
      group: shape.group.nullable(),
      task: shape.task.nullable(),
      level: shape.level.nullable(),
      says: shape.says.nullable(),
      decides: shape.decides.nullable(),
      caution: shape.caution.nullable(),
      as: shape.as.nullable(),
      place: shape.place.nullable(),
      part: shape.part.nullable(),
      cures: shape.cures.nullable(),
      least: shape.least.nullable(),
      most: shape.most.nullable(),
      cases: shape.cases.nullable(),
      unlessRanged: shape.unlessRanged.nullable(),
      source: shape.source.nullable(),
      sourceNote: shape.sourceNote.nullable(),
      who: shape.who.nullable(),
    })
    .partial(),
});

/** Fields of a line; null removes a field. */
export type LineFields = z.infer<typeof ChangeLine>['fields'];

export const changeLine = lineAct<z.infer<typeof ChangeLine>>({
  name: 'changeLine',
  says: 'Changes fields of a line; refused where a rule of the recipe could no longer be read.',
  input: ChangeLine,
  run: (records, line, input) => {
    const fields = withUnit(line, input.fields);
    const next = withFields(line, fields);
    const fault = lineFault(records, next);
    if (fault) return failed(fault);
    const keys = Object.keys(fields).map((key) => headingOf('line', key).toLowerCase());
    return ok(linesWritten(records, `${inSentence(lineLabel(line))}: ${keys.join(', ')}`, [next]));
  },
});

/** A check is a yes or no and work is minutes: a line that becomes one gets that unit. */
function withUnit(line: Line, asked: LineFields): LineFields {
  if (asked.role === undefined || asked.role === line.role || asked.unit !== undefined) return asked;
  if (asked.role === 'check') return { ...asked, unit: 'yes_no', low: null, high: null };
  if (asked.role === 'work') return { ...asked, unit: 'min' };
  return line.role === 'check' ? { ...asked, unit: 'mm' } : asked;
}

const WriteLine = z.strictObject({
  line: LineId,
  text: shape.text.describe('As it is typed: a bare number has the unit that the line is shown in.'),
});

export const writeLine = lineAct<z.infer<typeof WriteLine>>({
  name: 'writeLine',
  says: "Writes a line's figure or rule in its house recipe; an empty text is a figure not known yet.",
  input: WriteLine,
  run: (records, line, { text: typed }) => {
    const display = displayOf(workshopOf(records));
    const text = writtenText(typed, line, display);
    if (!text.ok) return failed({ kind: 'unreadable', line: line.name, text: typed.trim(), fault: text.fault });
    const next = houseText(records, line, text.value);
    if (!next.ok) return next;
    return ok(linesWritten(records, houseLabel(line, textInLabel(text.value, line, display)), [next.value]));
  },
});

/** `drain gap of the house to 15 mm` */
export function houseLabel(line: Line, said: string): string {
  return `${inSentence(lineLabel(line))} of the house to ${said === '' ? 'no figure' : said}`.slice(0, 300);
}

/** A line with another text of the house. Refused if it cannot be read or makes a cycle, there or in what inherits it. */
export function houseText(records: Records, line: Line, text: string): Result<Line, ActFault> {
  const next = lineWithHouseText(records, line, text);
  const broken = next.ok && familyFault(records, withLines(records, line.recipe, { put: [next.value] }), next.value);
  return broken ? failed(broken) : next;
}

/** The same for its own recipe alone. */
export function lineWithHouseText(records: Records, line: Line, text: string): Result<Line, ActFault> {
  const lines = linesOf(records, line.recipe);
  const reading = boxReader(lines).read(line, text);
  if (reading.is === 'faulty') return failed({ kind: 'unreadable', line: line.name, text, fault: reading.fault });
  const next = lineWithText(line, text, reading);
  const crossed = rangeFault(next);
  if (crossed) return failed(crossed);
  const cycle = ringFault(lines, next);
  return cycle ? failed(cycle) : ok(next);
}

/**
 * A plain figure has no range: it is a measurement or a decision. A rule has none of its own. Another figure is not from
 * where the one before it was.
 */
function lineWithText(line: Line, text: string, reading: BoxReading): Line {
  const { least: _least, most: _most, source: _source, sourceNote: _sourceNote, ...plain } = line;
  const next: Line = { ...plain, ...textAndRange(line, text, reading) };
  const isSame = next.text === line.text && next.least === line.least && next.most === line.most;
  return isSame ? line : next;
}

function textAndRange({ unit }: Line, text: string, reading: BoxReading): Pick<Line, 'text' | 'least' | 'most'> {
  if (reading.is !== 'figure' || !reading.range) return { text };
  const inUnit = (base: number) => cleanNoise(fromBase(base, unitOf(unit)));
  const { least, most } = reading.range;
  return { text: splitRange(text)?.likely ?? text, least: inUnit(least), most: inUnit(most) };
}

const MoveUse = z.strictObject({
  line: LineId,
  use: z.enum(useNames).optional().describe('Left out, the program reads the line for nothing.'),
});

export const moveUse = lineAct<z.infer<typeof MoveUse>>({
  name: 'moveUse',
  says: 'Has the program read a line for a use; the line of its recipe that had it until now loses it.',
  input: MoveUse,
  run: (records, _, input) => useMoved({ records }, input),
});

const WriteRecipe = z.strictObject({
  recipe: z.string(),
  fields: recordKinds.recipe.pick({ title: true, note: true }).partial(),
});

export const writeRecipe = act<z.infer<typeof WriteRecipe>>({
  name: 'writeRecipe',
  says: 'Rewrites the title of a house recipe, or what it is for.',
  input: WriteRecipe,
  run: ({ records }, { recipe: id, fields }) => {
    const recipe = findRecord(records, 'recipe', id);
    if (!recipe.ok) return recipe;
    const to = withFields(recipe.value, { ...fields, title: fields.title?.trim() });
    if (to.title === '') return failed({ kind: 'no-recipe-title' });
    return ok(recordChanged(`${id}: ${Object.keys(fields).join(', ')}`, 'recipe', { from: recipe.value, to }));
  },
});
