import type { HeldFields } from '#shared-calc/fields/difference.ts';
import { fieldsOf } from '#shared-calc/fields/record-fields.ts';
import type { Difference, Line, Records } from '#shared-calc/records/records.ts';
import { sameData } from '#shared-calc/records/same-data.ts';
import { descendantsOf, lineIdIn } from './family.ts';
import { linesFor, linesOf } from './lines-of.ts';

interface Written {
  /** Lines as they should be in the recipe, new ones among them. */
  readonly put?: readonly Line[];
  /** Ids of lines that it should not have. */
  readonly gone?: readonly string[];
}

/**
 * The book with lines of a recipe as they should be: its own are written, those it inherits become differences from the
 * parent; what is as in the parent again has none. An own line that goes takes the differences of the recipes below along.
 */
export function withLines(records: Records, recipe: string, { put = [], gone = [] }: Written): Records {
  const above = linesAbove(records, recipe);
  const line = new Map(records.line);
  const difference = new Map(records.difference);
  const setMark = (id: string, mark: Difference | undefined) =>
    mark ? difference.set(id, mark) : difference.delete(id);
  for (const each of put) {
    const parent = line.has(each.id) ? undefined : above.get(each.id);
    if (parent) setMark(each.id, changedMark(parent, each, records.difference.get(each.id)));
    else line.set(each.id, each);
  }
  for (const id of gone) {
    const parent = above.get(id);
    const dropped = line.get(id);
    line.delete(id);
    for (const each of dropped ? marksUnder(records, dropped) : marksOn(records, recipe, id)) difference.delete(each);
    if (parent) setMark(id, { id, recipe, line: id, what: 'left out', fields: {}, was: heldOf(parent) });
  }
  return { ...records, line, difference };
}

/** The lines of the parent as they would be here, by id. */
export function linesAbove(records: Records, recipe: string): ReadonlyMap<string, Line> {
  const parent = records.recipe.get(recipe)?.parent;
  const lines = parent === undefined ? [] : linesOf(records, parent);
  return new Map(lines.map((line) => [lineIdIn(recipe, line), line]));
}

function marksOn({ difference }: Records, recipe: string, line: string): readonly string[] {
  return [...difference.values()].flatMap((mark) => (mark.recipe === recipe && mark.line === line ? mark.id : []));
}

/** What the recipe of an own line, and those below, differ in on it. */
function marksUnder(records: Records, line: Line): readonly string[] {
  return [line.recipe, ...descendantsOf(records, line.recipe)].flatMap((recipe) =>
    marksOn(records, recipe, recipe === line.recipe ? line.id : lineIdIn(recipe, line)),
  );
}

const heldKeys = fieldsOf('line').flatMap(([key]) => (['id', 'recipe', 'name'].includes(key) ? [] : key));
/** A figure goes with its unit, its range and its source. */
const figureKeys = ['text', 'unit', 'options', 'least', 'most', 'source', 'sourceNote'];

/** Some fields of a line, null where it has none; left out: all of them. */
export function heldOf(line: Line, keys: readonly string[] = heldKeys): HeldFields {
  const fields = new Map<string, unknown>(Object.entries(line));
  return Object.fromEntries(keys.map((key) => [key, fields.get(key) ?? null]));
}

/** The fields in which two lines differ; if it is the figure, all that belongs to it. */
export function keysBetween(one: Line, other: Line): readonly string[] {
  const [from, to] = [heldOf(one), heldOf(other)].map((held) => new Map<string, unknown>(Object.entries(held)));
  const differs = (key: string) => !sameData(from?.get(key), to?.get(key));
  const changed = heldKeys.filter(differs);
  return changed.some((key) => figureKeys.includes(key)) ? [...new Set([...changed, ...figureKeys])] : changed;
}

/** What a line changes of its parent; what it changed before keeps what the parent had then. */
function changedMark(parent: Line, line: Line, before: Difference | undefined): Difference | undefined {
  const keys = keysBetween(parent, line);
  if (keys.length === 0) return undefined;
  const was = { ...heldOf(parent, keys), ...(before?.what === 'changed' ? within(before.was, keys) : {}) };
  const { id, recipe } = line;
  return { id, recipe, line: id, what: 'changed', fields: heldOf(line, keys), was };
}

function within(fields: HeldFields, keys: readonly string[]): HeldFields {
  return Object.fromEntries(Object.entries(fields).filter(([key]) => keys.includes(key)));
}

/** The book with a line that is otherwise for some tanks alone; as for the others again, it has no difference. */
export function withLineFor(records: Records, line: Line, tanks: readonly string[]): Records {
  const { recipe, id } = line;
  const freed = withoutTanks(records, { recipe, line: id }, tanks);
  const usual = linesFor(freed, recipe, tanks[0] ?? '').find((each) => each.id === id);
  const keys = usual ? keysBetween(usual, line) : [];
  if (!usual || keys.length === 0) return freed;
  const made = limitedMark(freed.difference, { line, tanks, fields: heldOf(line, keys), was: heldOf(usual, keys) });
  return { ...freed, difference: new Map(freed.difference).set(made.id, made) };
}

/** The book in which these tanks have the line as the others. */
export function withoutTanks(
  records: Records,
  of: Pick<Difference, 'recipe' | 'line'>,
  tanks: readonly string[],
): Records {
  const difference = new Map(records.difference);
  for (const mark of records.difference.values()) {
    if (mark.recipe !== of.recipe || mark.line !== of.line || mark.for === undefined) continue;
    const rest = mark.for.filter((tank) => !tanks.includes(tank));
    if (rest.length === 0) difference.delete(mark.id);
    else difference.set(mark.id, { ...mark, for: rest });
  }
  return { ...records, difference };
}

interface Limited extends Pick<Difference, 'fields' | 'was'> {
  readonly line: Line;
  readonly tanks: readonly string[];
}

/** Tanks with the same difference share one. */
function limitedMark(known: ReadonlyMap<string, Difference>, { line, tanks, fields, was }: Limited): Difference {
  const { id: of, recipe } = line;
  const same = [...known.values()].find(
    (mark) => mark.line === of && mark.for !== undefined && mark.what === 'changed' && sameData(mark.fields, fields),
  );
  if (same) return { ...same, for: [...new Set([...(same.for ?? []), ...tanks])].toSorted() };
  let id = `${of}@${tanks[0] ?? ''}`;
  for (let nth = 2; known.has(id); nth += 1) id = `${of}@${tanks[0] ?? ''}-${nth}`;
  return { id, recipe, line: of, what: 'changed', fields, was, for: [...tanks] };
}
