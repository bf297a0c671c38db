import type { HeldFields } from '#shared-calc/fields/difference.ts';
import { groupOf, groupsOf, type Groups } from '#shared-calc/records/groups.ts';
import { memo, memos, sameList } from '#shared-calc/records/memo.ts';
import type { Difference, Line, Records } from '#shared-calc/records/records.ts';
import { bySortKey, sortKeyBetween } from '#shared-calc/records/sort-key.ts';
import { chainOf, lineIdIn } from './family.ts';

/** The tables that the lines of a recipe are in. */
export type RecipeTables = Pick<Records, 'recipe' | 'line' | 'difference'>;

/** The recipes of a book, each whole: with what it inherits. */
export interface WholeRecipes {
  /** The lines of a recipe, in order. */
  readonly lines: (recipe: string) => readonly Line[];
  /** The same for a tank; the same list where nothing differs for it. */
  readonly linesFor: (recipe: string, tank: string) => readonly Line[];
  /** A line of any recipe by its id there. */
  readonly find: (id: string) => Line | undefined;
  readonly all: () => readonly Line[];
}

const known = new WeakMap<
  RecipeTables['line'],
  Pick<RecipeTables, 'recipe' | 'difference'> & { whole: WholeRecipes }
>();

/** The recipes of a book; cached, and only what a change reaches is worked again. */
export function wholeRecipes({ recipe, line, difference }: RecipeTables): WholeRecipes {
  const before = known.get(line);
  if (before?.recipe === recipe && before.difference === difference) return before.whole;
  const whole = openRecipes({ recipe, line, difference });
  known.set(line, { recipe, difference, whole });
  return whole;
}

/** What was worked last, so that lines that nothing changed stay the same objects. */
const cache = {
  own: memo<Groups<Line>>(),
  differences: memo<Groups<Difference>>(),
  levels: memos<readonly Line[]>(),
  lines: memos<Line>(),
};

function openRecipes(tables: RecipeTables): WholeRecipes {
  const { line, difference } = tables;
  const own = cache.own([line], (before) =>
    groupsOf(line.values(), { keyOf: ({ recipe }) => recipe, inOrder: bySortKey }, before),
  );
  const differences = cache.differences([difference], (before) =>
    groupsOf(difference.values(), { keyOf: ({ recipe }) => recipe }, before),
  );
  const worked = new Map<string, readonly Line[]>();
  const linesOf = (recipe: string, tank?: string): readonly Line[] => {
    const key = `${recipe}\n${tank ?? ''}`;
    const lines = worked.get(key) ?? workLines({ tables, own, differences }, recipe, tank);
    worked.set(key, lines);
    return lines;
  };
  let byId: ReadonlyMap<string, Line> | undefined;
  const index = () =>
    (byId ??= new Map([...tables.recipe.keys()].flatMap((recipe) => linesOf(recipe).map((each) => [each.id, each]))));
  return {
    lines: (recipe) => linesOf(recipe),
    linesFor: linesOf,
    find: (id) => index().get(id),
    all: () => [...index().values()],
  };
}

interface Grouped {
  readonly tables: RecipeTables;
  readonly own: Groups<Line>;
  readonly differences: Groups<Difference>;
}

function workLines({ tables, own, differences }: Grouped, recipe: string, tank: string | undefined): readonly Line[] {
  const chain = chainOf(tables, recipe).map(({ id }) => id);
  let lines: readonly Line[] = [];
  let key = '';
  for (const id of chain.length === 0 ? [recipe] : chain) {
    const marks = marksFor(groupOf(differences, id), tank);
    const limited = marks.filter((mark) => mark.for !== undefined).map((mark) => mark.id);
    key = [key, id, ...limited].join('\n');
    const level = { key, recipe: id, above: lines, own: groupOf(own, id), marks };
    lines = cache.levels(key, [lines, level.own, ...marks], (before) => sameList(workLevel(level), before));
  }
  return lines;
}

/** The differences that hold for a tank, those for some tanks alone behind the others. */
function marksFor(marks: readonly Difference[], tank: string | undefined): readonly Difference[] {
  const all = marks.filter((mark) => mark.for === undefined);
  return [...all, ...marks.filter((mark) => tank !== undefined && mark.for?.includes(tank))];
}

interface Level {
  readonly key: string;
  readonly recipe: string;
  /** The lines of the parent; none for a recipe without one. */
  readonly above: readonly Line[];
  readonly own: readonly Line[];
  readonly marks: readonly Difference[];
}

/** One recipe over its parent. */
function workLevel({ key, recipe, above, own, marks }: Level): readonly Line[] {
  if (above.length === 0 && marks.length === 0) return own;
  const marksOf = Map.groupBy(marks, ({ line }) => line);
  const ownIds = new Set(own.map(({ id }) => id));
  const here = (from: Line): readonly Line[] => {
    const id = from.recipe === recipe ? from.id : lineIdIn(recipe, from);
    const differing = marksOf.get(id) ?? [];
    if (differing.some(({ what }) => what === 'left out')) return [];
    if (from.recipe === recipe && differing.length === 0) return [from];
    return [cache.lines(`${key}\n${id}`, [from, ...differing], () => lineHere(from, { id, recipe }, differing))];
  };
  const inherited = above.flatMap(here).filter(({ id }) => !ownIds.has(id));
  const added = own.flatMap(here);
  if (added.length === 0 && !marks.some(({ fields }) => fields.order !== undefined)) return inherited;
  return apart([...inherited, ...added].toSorted(bySortKey));
}

function lineHere(from: Line, at: Pick<Line, 'id' | 'recipe'>, marks: readonly Difference[]): Line {
  const line = marks.reduce((so, { fields }) => withHeld(so, fields), { ...from, ...at });
  const last = marks.findLast(({ fields }) => fields.text !== undefined);
  if (last ? last.for !== undefined : limited.has(from)) limited.add(line);
  return line;
}

const limited = new WeakSet<Line>();

/** Whether the figure or rule of a line is one for some tanks alone. */
export function isForTank(line: Line): boolean {
  return limited.has(line);
}

/** A line with some fields of its own; null takes a field away. */
export function withHeld(line: Line, fields: HeldFields): Line {
  const next = { ...line };
  for (const [key, value] of Object.entries(fields)) {
    if (value === null) Reflect.deleteProperty(next, key);
    else if (value !== undefined) Reflect.set(next, key, value);
  }
  return next;
}

/** Two lines that came to the same place, one of the parent and one added here, get a key each. */
function apart(lines: readonly Line[]): readonly Line[] {
  let last = '';
  return lines.map((line, at) => {
    const next = lines.slice(at + 1).find(({ order }) => order > last)?.order;
    const order = line.order > last ? line.order : sortKeyBetween(last, next);
    last = order;
    return order === line.order ? line : { ...line, order };
  });
}
