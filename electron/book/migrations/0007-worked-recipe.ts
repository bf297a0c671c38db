import { z } from 'zod';
import { lazy } from '#shared-calc/records/memo.ts';
import { sortKeyBetween } from '#shared-calc/records/sort-key.ts';
import { capital } from '#shared-calc/rule/capital.ts';
import { readRule } from '#shared-calc/rule/read-rule.ts';
import { renameInRule } from '#shared-calc/rule/rename-line.ts';
import { namesIn } from '#shared-calc/rule/tree.ts';
import data from './0007-lines.json' with { type: 'json' };
import type { RecipeNote } from './migration.ts';

/** A line as it is stored: a value for each column. */
export type Line = Readonly<Record<string, string | number | null>> & {
  readonly id: string;
  readonly order: string;
  readonly section: string;
  readonly name: string;
  readonly text: string;
};

export interface WorkedRecipe {
  /** Those that are new or changed. */
  readonly lines: readonly Line[];
  readonly gone: readonly Line[];
  readonly note: RecipeNote;
}

const kinds = ['H1', 'H2', 'H3', 'H4'] as const;
type Kind = (typeof kinds)[number];

const Fields = z.record(z.string(), z.json());
const After = z.union([z.string(), z.record(z.string(), z.string().nullable())]).optional();
const Step = z.strictObject({
  in: z.array(z.enum(kinds)),
  after: After,
  line: Fields.optional(),
  name: z.string().optional(),
  was: Fields.default({}),
  becomes: Fields.default({}),
});
const Plan = z.strictObject({
  recipes: z.record(z.enum(kinds), z.array(z.string())),
  steps: z.array(Step),
  gone: z.array(z.strictObject({ in: z.array(z.enum(kinds)), name: z.string(), was: Fields })),
});
/** The program's own recipes, as they were and as they become; parsed when a book takes this step. */
const planned = lazy(() => Plan.parse(data));

type Step = z.infer<typeof Step>;

/** `undefined` for a recipe that was made from none of the program's own. */
export function workedRecipe(recipe: string, before: readonly Line[]): WorkedRecipe | undefined {
  const kind = kindOf(recipe, before);
  return kind && brought({ recipe, kind, before });
}

/** The one of the program's recipes with which it shares most lines, half of them at least; its own by its id. */
export function kindOf(recipe: string, lines: readonly Line[]): Kind | undefined {
  const shared = (kind: Kind) =>
    planned().recipes[kind].filter((name) => findLine({ recipe, name, lines })).length / planned().recipes[kind].length;
  const own = kinds.find((kind) => kind === recipe);
  const best = own ?? kinds.toSorted((one, other) => shared(other) - shared(one))[0];
  return best && shared(best) >= 0.5 ? best : undefined;
}

interface Sought {
  readonly recipe: string;
  readonly name: string;
  readonly lines: readonly Line[];
}

/** A line that was renamed still has its id. */
function findLine({ recipe, name, lines }: Sought): Line | undefined {
  return lines.find(({ id }) => id === `${recipe}.${name}`) ?? lines.find((line) => line.name === name);
}

interface House {
  readonly recipe: string;
  readonly kind: Kind;
  readonly before: readonly Line[];
}

function brought({ recipe, kind, before }: House): WorkedRecipe {
  const names = new Map<string, string>();
  for (const name of planned().recipes[kind]) {
    const line = findLine({ recipe, name, lines: before });
    if (line) names.set(name, line.name);
  }
  const steps = planned().steps.filter((step) => step.in.includes(kind));
  const left = nameNewLines({ names, steps, before });
  const list = [...before];
  const note = { moved: new Array<string>(), kept: new Array<RecipeNote['kept'][number]>() };
  const touched = new Map<string, Line>();
  for (const step of steps) {
    const made = step.line ? newLine(recipe, step.line, names) : changedLine({ step, names, list, note });
    if (!made) continue;
    const at = list.findIndex(({ id }) => id === made.id);
    if (at < 0 || step.after !== undefined) place(made, { list, at, after: predecessor(step, kind, names) });
    else list[at] = made;
    touched.set(made.id, made);
  }
  const gone = goneLines({ kind, names, before, note });
  const lines = withOrder(
    list.filter((line) => !gone.includes(line)),
    before,
  );
  return {
    lines: lines.filter(({ id }) => touched.has(id)),
    gone,
    note: { kind: 'recipe-worked', recipe, added: lines.length + gone.length - before.length, ...note, left },
  };
}

interface Named {
  readonly names: Map<string, string>;
  readonly steps: readonly Step[];
  readonly before: readonly Line[];
}

/**
 * Gives each new line a name that is free in the book; a line whose rule would read one that the house has taken out is
 * left out. Answers the labels of those.
 */
function nameNewLines({ names, steps, before }: Named): readonly string[] {
  const fresh = new Map(steps.flatMap(({ line }) => (line ? [[textOf(line, 'name'), line] as const] : [])));
  const left: string[] = [];
  const isThere = (name: string) => names.has(name) || fresh.has(name);
  for (let more = true; more;) {
    more = false;
    for (const [name, line] of fresh) {
      if (namesOf(line).every(isThere)) continue;
      fresh.delete(name);
      left.push(textOf(line, 'label'));
      more = true;
    }
  }
  const taken = new Set(before.map(({ name }) => name));
  for (const name of fresh.keys()) {
    const free = freeOf(name, taken);
    taken.add(free);
    names.set(name, free);
  }
  return left;
}

function freeOf(name: string, taken: ReadonlySet<string>): string {
  if (!taken.has(name)) return name;
  let nth = 2;
  while (taken.has(`${name}_${nth}`)) nth += 1;
  return `${name}_${nth}`;
}

type Fields = z.infer<typeof Fields>;

function textOf(fields: Fields, key: string): string {
  const value = fields[key];
  return typeof value === 'string' ? value : '';
}

/** The lines that its rule and its sentence read. */
function namesOf(fields: Fields): readonly string[] {
  const rule = readRule(textOf(fields, 'text'));
  const said = [...textOf(fields, 'says').matchAll(/\{(\w+)\}/g)].map(([, name = '']) => name);
  return [...(rule.ok ? namesIn(rule.value) : []), ...said];
}

/** Text of the program in the names of the book: all at once, for one name may have become another. */
function inBookNames(text: string, names: ReadonlyMap<string, string>): string {
  const others = [...names].filter(([from, to]) => from !== to);
  const between = others.reduce((said, [from], nth) => renamed(said, from, `passing_name_${nth}`), text);
  return others.reduce((said, [, to], nth) => renamed(said, `passing_name_${nth}`, to), between);
}

function renamed(text: string, from: string, to: string): string {
  return renameInRule(text, from, to).replaceAll(`{${from}}`, `{${to}}`);
}

/** Values by column, as they are stored. */
function stored(fields: Fields, names: ReadonlyMap<string, string>): Record<string, string | number | null> {
  return Object.fromEntries(
    Object.entries(fields).map(([key, value]) => {
      const column = key.replaceAll(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);
      if (typeof value === 'string')
        return [column, key === 'text' || key === 'says' ? inBookNames(value, names) : value];
      if (typeof value === 'boolean') return [column, Number(value)];
      return [column, typeof value === 'number' || value === null ? value : JSON.stringify(value)];
    }),
  );
}

function newLine(recipe: string, fields: Fields, names: ReadonlyMap<string, string>): Line | undefined {
  const name = names.get(textOf(fields, 'name'));
  if (name === undefined) return undefined;
  const values = { note: '', shown_first: 0, inset: 0, per_job: 0, ...stored(fields, names) };
  const { section, text } = { section: textOf(fields, 'section'), text: inBookNames(textOf(fields, 'text'), names) };
  return { ...values, id: `${recipe}.${name}`, recipe, order: '', section, name, text };
}

interface Changing {
  readonly step: Step;
  readonly names: ReadonlyMap<string, string>;
  readonly list: readonly Line[];
  readonly note: { readonly moved: string[]; readonly kept: RecipeNote['kept'][number][] };
}

/** Figure, rule, range and role go together; every other field changes where the house has left it as it was. */
function changedLine({ step, names, list, note }: Changing): Line | undefined {
  const name = names.get(step.name ?? '');
  const line = list.find((each) => each.name === name);
  if (!line) return undefined;
  const [was, becomes] = [stored(step.was, names), stored(step.becomes, names)];
  const isOurs = was['text'] === undefined || was['text'] === line.text;
  const canBe = namesOf(step.becomes).every((each) => names.has(each));
  const takes = isOurs && canBe;
  noteChange(note, { line, becomes, takes });
  const to = Object.entries(becomes).filter(([column]) =>
    withRule.has(column) ? takes : sameValue(line[column], was[column]) && !isTaken(column, becomes[column], list),
  );
  return { ...line, ...Object.fromEntries(to) };
}

interface Noted {
  readonly line: Line;
  readonly becomes: Readonly<Record<string, Line[string]>>;
  readonly takes: boolean;
}

function noteChange(note: Changing['note'], { line, becomes, takes }: Noted): void {
  const { text = '' } = becomes;
  if (!takes) note.kept.push({ label: labelOf(line), has: line.text, house: withRange(String(text), becomes) });
  else if (text !== '' && text !== line.text && !note.moved.includes(labelOf(line))) note.moved.push(labelOf(line));
}

/** `12 % (8 to 18)` */
function withRange(text: string, { least, most }: Noted['becomes']): string {
  return typeof least === 'number' ? `${text} (${least} to ${most})` : text;
}

function labelOf({ label, name }: Line): string {
  return typeof label === 'string' ? label : capital(name.replaceAll('_', ' '));
}

const withRule: ReadonlySet<string> = new Set(['role', 'text', 'least', 'most', 'cases']);

function sameValue(one: Line[string] | undefined, other: Line[string] | undefined): boolean {
  return (one ?? null) === (other ?? null);
}

/** One line of a recipe is read for a use. */
function isTaken(column: string, value: Line[string] | undefined, list: readonly Line[]): boolean {
  return column === 'use' && list.some((line) => line['use'] === value);
}

function predecessor({ after }: Step, kind: Kind, names: ReadonlyMap<string, string>): string | undefined {
  const name = typeof after === 'string' ? after : after?.[kind];
  return typeof name === 'string' ? names.get(name) : undefined;
}

interface Placing {
  readonly list: Line[];
  /** Where it is now; below zero for a new one. */
  readonly at: number;
  readonly after: string | undefined;
}

/** After its predecessor; where that is gone, at the end of its section. */
function place(line: Line, { list, at, after }: Placing): void {
  if (at >= 0) list.splice(at, 1);
  const before = list.findIndex(({ name }) => name === after);
  const end = before >= 0 ? before : list.findLastIndex(({ section }) => section === line.section);
  const section = list.some((each) => each.section === line.section)
    ? line.section
    : (list[end]?.section ?? line.section);
  list.splice(end < 0 ? list.length : end + 1, 0, { ...line, section, order: '' });
}

interface Leaving {
  readonly kind: Kind;
  readonly names: ReadonlyMap<string, string>;
  readonly before: readonly Line[];
  readonly note: Changing['note'];
}

/** Lines that others replace, as long as the house has left them as they were. */
function goneLines({ kind, names, before, note }: Leaving): readonly Line[] {
  return planned().gone.flatMap((gone) => {
    const line = gone.in.includes(kind) && before.find(({ name }) => name === names.get(gone.name));
    if (!line) return [];
    const was = stored(gone.was, names);
    if (was['text'] === line.text && was['says'] === line['says']) return [line];
    note.kept.push({ label: labelOf(line), has: line.text, house: '' });
    return [];
  });
}

/** A key for each line that was placed, between those of its neighbours. */
function withOrder(list: readonly Line[], before: readonly Line[]): readonly Line[] {
  const fixed = new Map(before.map(({ id, order }) => [id, order]));
  const keys: string[] = [];
  return list.map((line, at) => {
    const next = list.slice(at + 1).find(({ order }) => order !== '');
    const key = line.order === '' ? sortKeyBetween(keys.at(-1), next && fixed.get(next.id)) : line.order;
    keys.push(key);
    return { ...line, order: key };
  });
}
