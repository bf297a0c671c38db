import { boxReader } from '#shared-calc/bench/box-reader.ts';
import { freeId } from '#shared-calc/jobs/find-job.ts';
import { linesOf } from '#shared-calc/jobs/open-sheet.ts';
import { putRecords } from '#shared-calc/jobs/put-records.ts';
import { lineLabel } from '#shared-calc/papers/bench-csv.ts';
import { usesFor } from '#shared-calc/acts/move-use.ts';
import { sayWithoutUse } from '#shared-calc/words/say-use.ts';
import { findUnit } from '#shared-calc/quantity/unit.ts';
import { noLines } from '#shared-calc/recipe/scope.ts';
import type { Change } from '#shared-calc/records/change.ts';
import { diffRecords } from '#shared-calc/records/diff-records.ts';
import type { Line, LocalValue, Recipe, Records } from '#shared-calc/records/records.ts';
import { sortKeyBetween } from '#shared-calc/records/sort-key.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { lineNameFault } from '#shared-calc/rule/line-name.ts';
import { namesIn } from '#shared-calc/rule/tree.ts';
import { renameInRule } from '#shared-calc/rule/rename-line.ts';
import { inSentence } from '#shared-calc/words/called-by-words.ts';
import { sayNameFault } from '#shared-calc/words/say-name-fault.ts';
import { updateLine } from './house-changes.ts';
import { breaksOf, sayBreaks, type Break } from './line-breaks.ts';

export interface MadeLine {
  readonly name: string;
  readonly change: Change;
}

/** A new given line straight after another, or at the end; its name and all else is written afterwards. */
export function addLine(records: Records, recipe: string, after: string | undefined): MadeLine {
  const lines = linesOf(records, recipe);
  const at = lines.findIndex((line) => line.name === after);
  const before = lines[at] ?? lines.at(-1);
  const next = before && lines[lines.indexOf(before) + 1];
  const name = freeId('new_line', new Set(lines.map((line) => line.name))).replaceAll('-', '_');
  const line: Line = {
    id: freeId(`${recipe}.${name}`, records.line),
    recipe,
    order: sortKeyBetween(before?.order, next?.order),
    section: before?.section ?? 'Lines',
    name,
    role: 'given',
    unit: 'mm',
    text: '',
    note: '',
    shownFirst: true,
    inset: false,
    perJob: false,
  };
  return {
    name,
    change: { label: `new line in ${recipe}`, added: [{ kind: 'line', record: line }], updated: [], removed: [] },
  };
}

/** Another name through every rule, sentence and local value that says the old one. */
export function renameLine(records: Records, line: Line, typed: string): Result<Change, string> {
  const name = typed.trim();
  const fault = lineNameFault(name, noLines.functions);
  if (fault) return failed(sayNameFault(fault));
  const lines = linesOf(records, line.recipe);
  if (lines.some((each) => each.name === name)) return failed(`There is a line called ${name} already.`);
  const renamed = lines.map((each) => renamedLine(each, line.name, name));
  const locals = localsOf(records, line.recipe).map((value) => renamedLocal(value, line.name, name));
  return ok(
    diffRecords(`${line.name} named ${name}`, records, {
      ...records,
      line: putRecords(records.line, renamed),
      localValue: putRecords(records.localValue, locals),
    }),
  );
}

function renamedLine(line: Line, from: string, to: string): Line {
  const says = line.says?.replaceAll(`{${from}}`, `{${to}}`);
  return {
    ...line,
    name: line.name === from ? to : line.name,
    text:
      line.unit === 'choice' && line.text !== from && !line.text.includes('(')
        ? line.text
        : renameInRule(line.text, from, to),
    ...(says !== undefined && { says }),
  };
}

function renamedLocal(value: LocalValue, from: string, to: string): LocalValue {
  return { ...value, line: value.line === from ? to : value.line, text: renameInRule(value.text, from, to) };
}

/** One place up or down; past its section's edge it goes over into the next section. */
export function moveLine(records: Records, line: Line, by: -1 | 1): Result<Change, string> {
  const lines = linesOf(records, line.recipe);
  const other = lines[lines.findIndex((each) => each.id === line.id) + by];
  if (!other) return failed(`${lineLabel(line)} is the ${by < 0 ? 'first' : 'last'} line already.`);
  const label = `${inSentence(lineLabel(line))} moved ${by < 0 ? 'up' : 'down'}`;
  if (other.section !== line.section) return ok(updateLine(line, { section: other.section }, label));
  return ok(
    diffRecords(label, records, {
      ...records,
      line: putRecords(records.line, [
        { ...line, order: other.order },
        { ...other, order: line.order },
      ]),
    }),
  );
}

/** Takes a line out, with what jobs have written over it; what that breaks is named by `breaksWithout`. */
export function removeLine(records: Records, line: Line): Change {
  const locals = localsOf(records, line.recipe).filter((value) => value.line === line.name);
  return diffRecords(`${inSentence(lineLabel(line))} removed`, records, {
    ...records,
    line: putRecords(records.line, [], [line.id]),
    localValue: putRecords(
      records.localValue,
      [],
      locals.map((value) => value.id),
    ),
  });
}

/** What could not be worked or said without a line: other lines of the recipe, and rules that jobs have written. */
export function breaksWithout(records: Records, line: Line): readonly Break[] {
  const lines = linesOf(records, line.recipe);
  const others = lines.filter((each) => each.id !== line.id);
  const broken = breaksOf(lines, others);
  const known = new Set(broken.map((each) => each.line));
  const said = others.filter((each) => !known.has(each.name) && each.says?.includes(`{${line.name}}`) === true);
  return [
    ...broken,
    ...said.map((each) => ({ line: each.name, label: lineLabel(each), says: `Its sentence says {${line.name}}.` })),
    ...localReaders(records, line, lines),
  ];
}

/** Jobs of its recipe that have written over a line, by their codes. */
export function jobsWriting(records: Records, line: Line): readonly string[] {
  const values = localsOf(records, line.recipe).filter((value) => value.line === line.name);
  return [...new Set(values.map((value) => value.job))];
}

function localReaders(records: Records, line: Line, lines: readonly Line[]): readonly Break[] {
  const reader = boxReader(lines);
  return localsOf(records, line.recipe).flatMap((value) => {
    const at = lines.find((each) => each.name === value.line);
    if (!at || at.id === line.id) return [];
    const reading = reader.read(at, value.text);
    if (reading.is !== 'rule' || !namesIn(reading.rule).includes(line.name)) return [];
    return [{ line: at.name, label: `${lineLabel(at)} in ${value.job}`, says: `A rule of ${value.job} reads it.` }];
  });
}

function localsOf(records: Records, recipe: string): readonly LocalValue[] {
  const jobs = new Set([...records.job.values()].filter((job) => job.recipe === recipe).map((job) => job.id));
  return [...records.localValue.values()].filter((value) => jobs.has(value.job));
}

/** Other fields of a line; refused where its own or another line's rule could no longer be read. */
export function changeLine(records: Records, line: Line, asked: Partial<Line>): Result<Change, string> {
  const fields = withUnit(line, asked);
  const lines = linesOf(records, line.recipe);
  const wrong = wrongWith({ ...line, ...fields }, lines);
  if (wrong !== undefined) return failed(wrong);
  return ok(updateLine(line, fields, `${inSentence(lineLabel(line))}: ${fieldWords(fields)}`));
}

/** What is wrong with a line as it would be, in one sentence. */
function wrongWith(next: Line, lines: readonly Line[]): string | undefined {
  if (next.unit !== 'choice' && next.unit !== 'yes_no' && !findUnit(next.unit)) {
    return `There is no unit called ${next.unit}.`;
  }
  if (next.low !== undefined && next.high !== undefined && next.low > next.high) {
    return 'The low bound lies above the high one.';
  }
  const unknown = unknownBraces(next, lines);
  if (unknown !== undefined) return `{${unknown}} in the sentence names no line.`;
  const breaks = breaksOf(
    lines,
    lines.map((each) => (each.id === next.id ? next : each)),
  );
  return breaks[0] ? `This would break ${sayBreaks(breaks)}. ${breaks[0].says}` : wrongUse(next);
}

function wrongUse(next: Line): string | undefined {
  if (next.use === undefined || usesFor(next).includes(next.use)) return undefined;
  return `${sayWithoutUse(next.use)} Move that use to another line first.`;
}

/** A check is a yes or no and work is minutes: a line that becomes one takes that unit with it. */
function withUnit(line: Line, asked: Partial<Line>): Partial<Line> {
  if (asked.role === undefined || asked.role === line.role || asked.unit !== undefined) return asked;
  if (asked.role === 'check') return { ...asked, unit: 'yes_no', low: undefined, high: undefined };
  if (asked.role === 'work') return { ...asked, unit: 'min' };
  return line.role === 'check' ? { ...asked, unit: 'mm' } : asked;
}

function unknownBraces({ says = '' }: Line, lines: readonly Line[]): string | undefined {
  const names = new Set(lines.map((line) => line.name));
  return [...says.matchAll(/\{(\w+)\}/g)].map(([, name = '']) => name).find((name) => !names.has(name));
}

const words: Readonly<Partial<Record<keyof Line, string>>> = {
  shownFirst: 'shown first',
  perJob: 'once a job',
  says: 'sentence',
  decides: 'who decides',
  low: 'low bound',
  high: 'high bound',
};

function fieldWords(fields: Partial<Line>): string {
  const keys = Object.keys(fields) as (keyof Line)[];
  return keys.map((key) => words[key] ?? key).join(', ');
}

export interface MadeRecipe {
  readonly id: string;
  readonly change: Change;
}

/** A new house recipe with all lines of another. */
export function copyRecipe(records: Records, recipe: Recipe): MadeRecipe {
  const numbers = [...records.recipe.keys()].map((id) => Number(/^H(\d{1,6})$/.exec(id)?.[1] ?? 0));
  const id = `H${Math.max(0, ...numbers) + 1}`;
  const lines = linesOf(records, recipe.id).map((line) => ({
    ...line,
    id: freeId(`${id}.${line.name}`, records.line),
    recipe: id,
  }));
  const title = `Copy of ${inSentence(recipe.title)}`;
  return {
    id,
    change: diffRecords(`${id}, a copy of ${recipe.id}`, records, {
      ...records,
      recipe: putRecords(records.recipe, [{ ...recipe, id, title }]),
      line: putRecords(records.line, lines),
    }),
  };
}
