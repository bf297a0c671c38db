import { z } from 'zod';
import { putRecords } from '#shared-calc/jobs/put-records.ts';
import { comparedMark, lineMarks, tankMarks, type LineMark } from '#shared-calc/recipe/family-marks.ts';
import { inSentence, lineLabel } from '#shared-calc/recipe/line-label.ts';
import { lineById } from '#shared-calc/recipe/lines-of.ts';
import { applyChange, emptyChange, squashChanges, added, type Change } from '#shared-calc/records/change.ts';
import { diffRecords } from '#shared-calc/records/diff-records.ts';
import { misfitOf } from '#shared-calc/records/misfit.ts';
import { recordKinds, type HouseChange, type Recipe, type Records } from '#shared-calc/records/records.ts';
import { withoutUndefined } from '#shared-calc/records/without-undefined.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import type { Derived } from '#shared-calc/derive/derived.ts';
import { act } from './act.ts';
import type { ActFault } from './act-fault.ts';
import { nextRecipeId } from './copy-recipe.ts';
import { recipesFault } from './family-check.ts';
import { findRecord } from './find-record.ts';
import { editsIn, numbered, type NewHouseChange } from './house-log.ts';
import { sentUp, type Sent } from './send-up.ts';

const { shape } = recordKinds.recipe;
const Who = z.string().optional().describe('Who does it: a rate of the rate book.');
const Lines = z.array(z.string()).min(1).optional();
const Note = z.string().max(10_000).default('');

const Fork = z.strictObject({
  recipe: z.string().describe('The parent.'),
  id: z.string().min(1).max(60).optional().describe('The code of the new recipe; left out, the next one.'),
  title: z.string().optional(),
  note: z.string().default(''),
  animalKind: shape.animalKind,
  tanks: shape.tanks,
  season: shape.season,
  who: Who,
});

export const forkRecipe = act<z.infer<typeof Fork>>({
  name: 'forkRecipe',
  says: 'Makes a recipe that has the lines of another and holds only what differs from it.',
  input: Fork,
  run: ({ records, today }, { recipe, id = nextRecipeId(records), title, who, ...more }) => {
    const parent = findRecord(records, 'recipe', recipe);
    if (!parent.ok) return parent;
    if (records.recipe.has(id)) return failed({ kind: 'recipe-taken', recipe: id });
    const made: Recipe = withoutUndefined({ id, title: title?.trim() ?? parent.value.title, ...more, parent: recipe });
    if (made.title === '') return failed({ kind: 'no-recipe-title' });
    const tank = made.tanks?.find((each) => !records.tank.has(each));
    if (tank !== undefined) return failed({ kind: 'no-tank-of-family', tank });
    const misfit = misfitOf(added('recipe', made), records);
    if (misfit) return failed(misfit);
    const entry = { recipe: id, on: today, note: made.note, inForceOn: today, how: 'fork' as const, of: recipe };
    return ok({
      ...emptyChange(`${id}, made from ${recipe}`),
      added: [added('recipe', made), ...numbered(records, [{ ...entry, ...by(who) }])],
    });
  },
});

function by(who: string | undefined): Pick<HouseChange, 'by'> {
  return who === undefined ? {} : { by: who };
}

const Take = z.strictObject({
  recipe: z.string(),
  lines: Lines.describe('Names of lines; left out, all in which the parent has changed since.'),
  keep: z.boolean().default(false).describe('Keeps what the recipe has, and counts the change of the parent as seen.'),
  tanks: z.enum(['stay', 'take']).default('stay').describe('Whether differences for some tanks alone stay or go, too.'),
  who: Who,
  note: Note,
});

export const takeFromParent = act<z.infer<typeof Take>>({
  name: 'takeFromParent',
  says: 'Takes lines of a recipe from its parent, or keeps its own where the parent has changed since.',
  input: Take,
  run: (derived, { recipe, lines, keep, tanks, who, note }) => {
    const { records } = derived;
    const family = familyOf(records, recipe);
    if (!family.ok) return family;
    const { parent, marks, limited } = family.value;
    const inherited = marks.filter(({ is }) => is !== 'added');
    const known = tanks === 'take' ? [...inherited, ...limited] : inherited;
    const chosen = chosenMarks({ recipe, known, limited, act: 'take' }, lines);
    if (!chosen.ok) return chosen;
    const taken = lines ? chosen.value : chosen.value.filter(({ moved }) => moved.length > 0);
    if (taken.length === 0) return failed({ kind: 'nothing-to-take', recipe, parent });
    const after = { ...records, difference: differencesTaken(records, taken, keep) };
    const fault = recipesFault(records, after, recipe);
    if (fault) return failed(fault);
    const words = wordsOf(records, taken);
    const told = { recipe, how: 'take' as const, of: parent, ...by(who) };
    if (!keep) return ok(withEntries(derived, changed(`${recipe} takes ${words} from ${parent}`), { ...told, note }));
    const label = `${recipe} keeps ${words}`;
    return ok(withEntry(derived, changed(label), { ...told, note: note || label }));

    function changed(says: string): Change {
      return diffRecords(says.slice(0, 300), records, after);
    }
  },
});

function differencesTaken(records: Records, taken: readonly LineMark[], keep: boolean): Records['difference'] {
  const compared = taken.flatMap(({ mark, parent }) => (mark && parent ? [comparedMark(mark, parent)] : []));
  if (keep) return putRecords(records.difference, compared);
  return putRecords(
    records.difference,
    [],
    compared.map(({ id }) => id),
  );
}

const Send = z.strictObject({
  recipe: z.string(),
  lines: Lines.describe('Names of lines; left out, all that differ.'),
  tanks: z
    .enum(['stay', 'same', 'all'])
    .default('stay')
    .describe('Differences for some tanks alone stay here, are so for these tanks in the parent, or for all tanks.'),
  of: z.string().optional().describe('Of `all`: the tank whose figures go up, where tanks differ among themselves.'),
  who: Who,
  note: Note,
});

export const sendToParent = act<z.infer<typeof Send>>({
  name: 'sendToParent',
  says: 'Has the parent of a recipe take what differs in it; the recipe then has no difference there.',
  input: Send,
  run: (derived, { recipe, who, note, ...choice }) => {
    const { records } = derived;
    const family = familyOf(records, recipe);
    if (!family.ok) return family;
    const { parent } = family.value;
    const sent = sentOf(family.value, recipe, choice);
    if (!sent.ok) return sent;
    const after = sentUp(records, sent.value);
    const fault = recipesFault(records, after, parent);
    if (fault) return failed(fault);
    const { marks, same = [], forAll = [] } = sent.value;
    const words = wordsOf(records, [...marks, ...same, ...forAll]);
    const change = diffRecords(`${words} of ${recipe} sent to ${parent}`.slice(0, 300), records, after);
    const logged = withEntries(derived, change, { recipe: parent, how: 'send', of: recipe, note, ...by(who) });
    return ok(withEntry(derived, logged, { recipe, how: 'send', of: parent, note: note || words, ...by(who) }));
  },
});

/** Which differences go up, and those for some tanks in which way. */
function sentOf(
  { parent, marks, limited }: InFamily,
  recipe: string,
  { lines, tanks, of }: Pick<z.infer<typeof Send>, 'lines' | 'tanks' | 'of'>,
): Result<Sent, ActFault> {
  const known = tanks === 'stay' ? marks : [...marks, ...limited.filter(isOf(of))];
  const chosen = chosenMarks({ recipe, known, limited, act: 'send' }, lines);
  if (!chosen.ok) return chosen;
  const whole = chosen.value.filter((mark) => mark.tanks === undefined);
  const forTanks = chosen.value.filter((mark) => mark.tanks !== undefined);
  if (tanks !== 'all') return ok({ recipe, parent, marks: whole, same: forTanks });
  const several = severalOf(forTanks);
  return several ? failed(several) : ok({ recipe, parent, marks: whole, forAll: forTanks });
}

function isOf(tank: string | undefined): (mark: LineMark) => boolean {
  return ({ tanks = [] }) => tank === undefined || tanks.includes(tank);
}

/** A line that has one figure for some tanks and another for others cannot have both for all. */
function severalOf(limited: readonly LineMark[]): ActFault | undefined {
  const [several] = [...Map.groupBy(limited, ({ line }) => line).values()].filter((marks) => marks.length > 1);
  const [first] = several ?? [];
  if (!several || !first?.parent) return undefined;
  return {
    kind: 'several-for-tanks',
    line: lineLabel(first.parent),
    tanks: several.map(({ tanks = [] }) => tanks.join(' and ')),
  };
}

interface InFamily {
  readonly parent: string;
  readonly marks: readonly LineMark[];
  /** What differs for some tanks alone. */
  readonly limited: readonly LineMark[];
}

function familyOf(records: Records, id: string): Result<InFamily, ActFault> {
  const recipe = findRecord(records, 'recipe', id);
  if (!recipe.ok) return recipe;
  const { parent } = recipe.value;
  if (parent === undefined) return failed({ kind: 'no-parent', recipe: id });
  return ok({ parent, marks: lineMarks(records, id), limited: tankMarks(records, id) });
}

interface Choice {
  readonly recipe: string;
  readonly known: readonly LineMark[];
  readonly limited: readonly LineMark[];
  readonly act: 'take' | 'send';
}

/** The differences of these lines, or all. */
function chosenMarks(
  { recipe, known, limited, act: does }: Choice,
  lines: readonly string[] | undefined,
): Result<readonly LineMark[], ActFault> {
  const isKnown = (name: string) => known.some((mark) => mark.name === name);
  const unknown = (lines ?? []).filter((name) => !isKnown(name));
  const forTanks = limited.filter(({ name }) => (lines ? unknown.includes(name) : known.length === 0));
  if (forTanks.length > 0) {
    const labels = forTanks.flatMap(({ parent }) => (parent ? inSentence(lineLabel(parent)) : []));
    return failed({ kind: 'for-tanks-only', recipe, lines: [...new Set(labels)], act: does });
  }
  if (unknown.length > 0 || known.length === 0) return failed({ kind: 'no-difference', recipe, lines: unknown });
  return ok(lines ? known.filter(({ name }) => lines.includes(name)) : known);
}

function wordsOf(records: Records, marks: readonly LineMark[]): string {
  const words = marks.map(({ line, parent, name }) => {
    const of = lineById(records, line) ?? parent;
    return of ? inSentence(lineLabel(of)) : name;
  });
  return [...new Set(words)].join(', ');
}

type Told = Pick<NewHouseChange, 'recipe' | 'how' | 'of' | 'note' | 'by'>;

/** A change whose edits of one recipe stand in its log as this. */
function withEntries({ records, today: on }: Derived, change: Change, told: Told): Change {
  const edits = editsIn(records, change).filter(({ recipe }) => recipe === told.recipe);
  const entries = edits.map((edit) => ({ ...edit, ...told, on, inForceOn: on }));
  return { ...change, added: [...change.added, ...numbered(records, entries)] };
}

/** A change with one more entry in a log, of no line. */
function withEntry({ records, today: on }: Derived, change: Change, told: Told): Change {
  const now = applyChange(records, change);
  const entry: Change = { ...emptyChange(''), added: numbered(now, [{ ...told, on, inForceOn: on }]) };
  return squashChanges(change.label, [change, entry]);
}
