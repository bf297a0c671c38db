import { z } from 'zod';
import { putRecords } from '#shared-calc/jobs/put-records.ts';
import { isSold } from '#shared-calc/jobs/sold-house.ts';
import { valuesOver, writtenElsewhere } from '#shared-calc/jobs/job-recipes.ts';
import { withDescendants } from '#shared-calc/recipe/family.ts';
import { inSentence, lineLabel } from '#shared-calc/recipe/line-label.ts';
import { linesOf, takenLineIds } from '#shared-calc/recipe/lines-of.ts';
import { nameOfLabel } from '#shared-calc/recipe/name-of-label.ts';
import { renamedLine } from '#shared-calc/recipe/rename-line.ts';
import { withLines } from '#shared-calc/recipe/write-lines.ts';
import { diffRecords } from '#shared-calc/records/diff-records.ts';
import type { Line, Records } from '#shared-calc/records/records.ts';
import { sortKeyBetween } from '#shared-calc/records/sort-key.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { readRule } from '#shared-calc/rule/read-rule.ts';
import { nearestName } from '#shared-calc/rule/nearest.ts';
import { namesIn } from '#shared-calc/rule/tree.ts';
import { freeId } from '#shared-calc/jobs/find-job.ts';
import { act } from './act.ts';
import type { ActFault, Need } from './act-fault.ts';
import { findRecord } from './find-record.ts';
import { needsOf, readersOf } from './line-breaks.ts';
import { recipesFault } from './family-check.ts';

const Chosen = {
  section: z.string().optional().describe('All lines of this section.'),
  lines: z.array(z.string()).optional().describe('The names of the lines.'),
};

interface Choice {
  readonly section?: string | undefined;
  readonly lines?: readonly string[] | undefined;
}

/** The lines of a section, or those named, in order. */
function chosenOf(lines: readonly Line[], { section, lines: names = [] }: Choice): Result<readonly Line[], ActFault> {
  const unknown = names.find((name) => !lines.some((line) => line.name === name));
  if (unknown !== undefined) {
    const near = nearestName(
      unknown,
      lines.map(({ name }) => name),
    );
    return failed({ kind: 'no-line', line: unknown, ...(near !== undefined && { near }) });
  }
  const chosen = lines.filter((line) => line.section === section || names.includes(line.name));
  return chosen.length > 0
    ? ok(chosen)
    : failed({ kind: 'no-lines-chosen', ...(section !== undefined && { section }) });
}

const RemoveLines = z.strictObject({
  recipe: z.string(),
  ...Chosen,
  along: z.boolean().default(false).describe('Takes lines out with them that cannot be worked or said without them.'),
  anyway: z.boolean().default(false).describe('Takes them out though jobs write over them or the program reads them.'),
});

export const removeLines = act<z.infer<typeof RemoveLines>>({
  name: 'removeLines',
  says: 'Takes a section or several lines out of a recipe at once; refused with a list of what rests on them.',
  input: RemoveLines,
  run: ({ records }, { recipe, along, anyway, ...choice }) => {
    const found = findRecord(records, 'recipe', recipe);
    if (!found.ok) return found;
    const lines = linesOf(records, recipe);
    const chosen = chosenOf(lines, choice);
    if (!chosen.ok) return chosen;
    const gone = along ? withReaders(lines, chosen.value) : chosen.value;
    const by = neededBy(records, gone).filter((need) => !anyway || !isTold(need));
    const [first] = gone;
    if (first && by.length > 0) return failed({ kind: 'needed', record: { kind: 'line', id: first.id }, by });
    const said = gone.length === 1 && first ? inSentence(lineLabel(first)) : `${gone.length} lines`;
    return ok(diffRecords(`${said} of ${recipe} removed`, records, withoutLines(records, recipe, gone)));
  },
});

/** Jobs and the program can do without a line; a rule cannot. */
function isTold({ is }: Need): boolean {
  return is === 'use' || is === 'written' || is === 'changed below';
}

/** Lines with all that read them, straight or through others. */
function withReaders(lines: readonly Line[], chosen: readonly Line[]): readonly Line[] {
  const all = new Set(chosen);
  for (const line of all) for (const reader of readersOf(lines, line.name)) all.add(reader);
  return lines.filter((line) => all.has(line));
}

/** What needs lines, apart from themselves; each once. */
function neededBy(records: Records, gone: readonly Line[]): readonly Need[] {
  const names = new Set(gone.map(({ name }) => name));
  const needs = gone
    .flatMap((line) => needsOf(records, line))
    .filter((need) => !('line' in need && names.has(need.line)));
  return [...new Map(needs.map((need) => [JSON.stringify(need), need])).values()];
}

function withoutLines(records: Records, recipe: string, gone: readonly Line[]): Records {
  const recipes = new Set(withDescendants(records, recipe));
  const names = new Set(gone.map(({ name }) => name));
  const values = [...recipes]
    .flatMap((each) => valuesOver(records, each))
    .filter(({ line, job }) => names.has(line) && !isSold(records, job))
    .filter((value) => !writtenElsewhere(records, value, recipes));
  return {
    ...withLines(records, recipe, { gone: gone.map(({ id }) => id) }),
    localValue: putRecords(
      records.localValue,
      [],
      values.map(({ id }) => id),
    ),
  };
}

const TakeLines = z.strictObject({
  recipe: z.string().describe('The recipe that gets them.'),
  from: z.string(),
  ...Chosen,
  after: z.string().optional().describe('The name of the line that they stand after; left out, in their section.'),
  along: z.boolean().default(false).describe('Takes with them what they read and the recipe does not have.'),
  clash: z
    .enum(['keep', 'take', 'rename'])
    .optional()
    .describe('Where the recipe has a line of that name: it stays, goes for the one taken, or that gets another name.'),
});

export const takeLines = act<z.infer<typeof TakeLines>>({
  name: 'takeLines',
  says: 'Takes a section or several lines over from another recipe; asks about what they read and about names that are there.',
  input: TakeLines,
  run: ({ records }, input) => {
    for (const id of [input.recipe, input.from]) {
      const found = findRecord(records, 'recipe', id);
      if (!found.ok) return found;
    }
    const taken = takenOf(records, input);
    if (!taken.ok) return taken;
    const { recipe, from } = input;
    const next = withTaken(records, input, taken.value);
    const fault = recipesFault(records, next, recipe);
    if (fault) return failed(fault);
    const said = taken.value.length === 1 ? '1 line' : `${taken.value.length} lines`;
    return ok(diffRecords(`${said} of ${from} taken into ${recipe}`, records, next));
  },
});

type Taking = z.infer<typeof TakeLines>;

/** The lines to put into the recipe, under the names that they have there; refused while a question is open. */
function takenOf(
  records: Records,
  { recipe, from, along, clash, ...choice }: Taking,
): Result<readonly Line[], ActFault> {
  const [here, there] = [linesOf(records, recipe), linesOf(records, from)];
  const chosen = chosenOf(there, choice);
  if (!chosen.ok) return chosen;
  const taken = withRead(there, chosen.value, here);
  const more = taken.filter((line) => !chosen.value.includes(line));
  if (more.length > 0 && !along) return failed({ kind: 'reads-others', recipe, lines: more.map(named) });
  const clashing = chosen.value.filter(({ name }) => here.some((line) => line.name === name));
  if (clashing.length > 0 && clash === undefined)
    return failed({ kind: 'names-clash', recipe, lines: clashing.map(named) });
  const kept = clash === 'keep' ? taken.filter((line) => !clashing.includes(line)) : taken;
  return ok(clash === 'rename' ? renamed(kept, clashing, here) : kept);
}

function named(line: Line): { readonly line: string; readonly label: string } {
  return { line: line.name, label: lineLabel(line) };
}

/** Lines with all that they read, straight or through others, and that is not here. */
function withRead(there: readonly Line[], chosen: readonly Line[], here: readonly Line[]): readonly Line[] {
  const known = new Set(here.map(({ name }) => name));
  const byName = new Map(there.map((line) => [line.name, line]));
  const all = new Set(chosen);
  for (const line of all) {
    for (const name of namesRead(line)) {
      const read = byName.get(name);
      if (read && !known.has(name)) all.add(read);
    }
  }
  return there.filter((line) => all.has(line));
}

function namesRead({ text, says = '' }: Line): readonly string[] {
  const rule = readRule(text);
  return [...(rule.ok ? namesIn(rule.value) : []), ...[...says.matchAll(/\{(\w+)\}/g)].map(([, name = '']) => name)];
}

/** Lines under names that are free here, through each other's rules. */
function renamed(lines: readonly Line[], clashing: readonly Line[], here: readonly Line[]): readonly Line[] {
  const taken = new Set([...here, ...lines].map(({ name }) => name));
  return clashing.reduce((so, { name }) => {
    const to = nameOfLabel(name, (each) => taken.has(each));
    taken.add(to);
    return so.map((line) => renamedLine(line, name, to));
  }, lines);
}

/** The book with lines put into a recipe; one that has the name of a line here takes its place. */
function withTaken(records: Records, { recipe, after: behind }: Taking, taken: readonly Line[]): Records {
  const here = linesOf(records, recipe);
  let after = behind;
  const ids = new Set(takenLineIds(records, recipe));
  const byName = new Map(here.map((line) => [line.name, line]));
  const names = new Set(taken.map(({ name }) => name));
  const uses = new Set(here.flatMap(({ use, name }) => (use === undefined || names.has(name) ? [] : use)));
  let list = [...here];
  const put = taken.map(({ use, ...line }): Line => {
    const own = use !== undefined && !uses.has(use) ? { use } : {};
    const before = byName.get(line.name);
    if (before) return { ...line, ...own, id: before.id, recipe, order: before.order, section: before.section };
    const at = placeFor(list, line, after);
    const order = sortKeyBetween(list[at - 1]?.order, list[at]?.order);
    const id = freeId(`${recipe}.${line.name}`, ids);
    ids.add(id);
    const made = { ...line, ...own, id, recipe, order };
    list = list.toSpliced(at, 0, made);
    after = after === undefined ? undefined : made.name;
    return made;
  });
  return withLines(records, recipe, { put });
}

/** Behind a line, or at the end of its section, or of all. */
function placeFor(list: readonly Line[], { section }: Pick<Line, 'section'>, after: string | undefined): number {
  const at = list.findLastIndex((line) => (after === undefined ? line.section === section : line.name === after));
  return at < 0 ? list.length : at + 1;
}
