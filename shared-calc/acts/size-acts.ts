import { z } from 'zod';
import { packId } from '#shared-calc/buy/pack-prices.ts';
import { freeId } from '#shared-calc/jobs/find-job.ts';
import { sizesOf } from '#shared-calc/jobs/job-sheet.ts';
import { putRecords } from '#shared-calc/jobs/put-records.ts';
import { MOST_BUILDS } from '#shared-calc/jobs/read-sizes.ts';
import { calledOf } from '#shared-calc/recipe/column.ts';
import { lineFor } from '#shared-calc/recipe/lines-by-use.ts';
import type { Change } from '#shared-calc/records/change.ts';
import { diffRecords } from '#shared-calc/records/diff-records.ts';
import {
  recordKinds,
  type Line,
  type LocalValue,
  type Pack,
  type PackPrice,
  type Records,
  type Size,
  type Tank,
} from '#shared-calc/records/records.ts';
import { withoutUndefined } from '#shared-calc/records/without-undefined.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { nearestName } from '#shared-calc/rule/nearest.ts';
import type { Derived } from '#shared-calc/derive/derived.ts';
import { act, type Act } from './act.ts';
import type { ActFault } from './act-fault.ts';
import { Coins } from './inputs.ts';
import { withFields } from './record-changes.ts';
import { findColumn, jobCells, type JobCells } from './job-cells.ts';

/** A size of a job, with its words. */
interface SizeOfJob {
  readonly cells: JobCells;
  readonly size: Size;
  readonly called: string;
}

/** An act on one size of a job, by the key of its column. */
function sizeAct<I extends { readonly job: string; readonly column: string }>(parts: {
  readonly name: string;
  readonly says: string;
  readonly input: z.ZodType<I>;
  readonly run: (of: SizeOfJob, input: I) => Result<Change, ActFault>;
}): Act<I> {
  return act<I>({
    ...parts,
    run: (derived, input) => {
      const cells = jobCells(derived, input.job);
      if (!cells.ok) return cells;
      const column = findColumn(cells.value, input.column);
      if (!column.ok) return column;
      const size = derived.records.size.get(column.value.size);
      if (!size) return failed({ kind: 'no-record', record: { kind: 'size', id: column.value.size } });
      return parts.run({ cells: cells.value, size, called: calledOf(column.value) }, input);
    },
  });
}

const OfSize = z.strictObject({ job: z.string(), column: z.string().describe('The size by its key: T07, or T07#2.') });
const OwnRecipe = z.string().describe('A recipe of the house; left out: that of the job.');
const TakeSize = z.strictObject({ job: z.string(), tank: z.string(), recipe: OwnRecipe.optional() });

export const takeSize = act<z.infer<typeof TakeSize>>({
  name: 'takeSize',
  says: 'Puts a tank of the tank book on the bench of a job, as its last size.',
  input: TakeSize,
  run: (derived, { job, tank: code, recipe }) => {
    const cells = ofRecipe(derived, job, recipe);
    if (!cells.ok) return cells;
    const tank = derived.records.tank.get(code);
    if (tank) return ok(takenAsLast(cells.value, tank));
    const near = nearestName(code, derived.records.tank.keys());
    return failed({ kind: 'no-tank', tank: code, ...(near !== undefined && { near }) });
  },
});

interface NewSize extends JobCells {
  /** Its lines. */
  readonly lines: readonly Line[];
  /** Left out: the recipe of the job. */
  readonly own?: string;
}

/** The cells of a job with the recipe that a size to be taken has. */
function ofRecipe(derived: Derived, job: string, recipe: string | undefined): Result<NewSize, ActFault> {
  const cells = jobCells(derived, job);
  if (!cells.ok) return cells;
  if (recipe === undefined || recipe === cells.value.job.recipe)
    return ok({ ...cells.value, lines: cells.value.read.lines });
  const recipes = derived.records.recipe;
  if (!recipes.has(recipe)) return failed({ kind: 'no-recipe', recipe, recipes: [...recipes.keys()] });
  return ok({ ...cells.value, lines: derived.lines(recipe), own: recipe });
}

function takenAsLast(cells: NewSize, tank: Tank): Change {
  const { records, job } = cells;
  const again = sizesOf(records, job.id).some((size) => size.tank === tank.id);
  const tables = sizeTaken(cells, tank);
  return diffRecords(again ? `${tank.id} taken again` : `${tank.id} taken`, records, { ...records, ...tables });
}

/** The recipe has a line that says a client's own tank is not bought. */
function sizeTaken({ records, job, lines, own }: NewSize, tank: Tank): Pick<Records, 'size' | 'localValue'> {
  const order = (sizesOf(records, job.id).at(-1)?.order ?? 0) + 1;
  const size = newSize(records, job.id, { tank: tank.id, order, ...(own !== undefined && { recipe: own }) });
  const line = tank.clientsOwn ? lineFor(lines, 'clientTank') : undefined;
  const brought = line && {
    id: freeId(`${size.id}.${line.name}`, records.localValue),
    job: job.id,
    size: size.id,
    line: line.name,
    text: 'yes',
    note: 'the client brings the tank',
    by: 'client' as const,
  };
  return {
    size: putRecords(records.size, [size]),
    localValue: putRecords(records.localValue, brought ? [brought] : []),
  };
}

const NewTank = z.strictObject({
  job: z.string(),
  tank: recordKinds.tank,
  priceCoins: Coins.optional(),
  recipe: OwnRecipe.optional(),
});

export const newTank = act<z.infer<typeof NewTank>>({
  name: 'newTank',
  says: 'Enters a tank that is in no book yet, with its price from today where that is known, and takes it as a size.',
  input: NewTank,
  run: (derived, { job, tank, priceCoins, recipe }) => {
    const { records, today } = derived;
    const cells = ofRecipe(derived, job, recipe);
    if (!cells.ok) return cells;
    if (records.tank.has(tank.id)) return failed({ kind: 'code-taken', code: tank.id });
    const { supplier } = tank;
    const id = freeId(packId(tank.id, 1), records.pack);
    const pack: Pack = { id, material: tank.id, amount: 1, ...(supplier !== undefined && { supplier }) };
    const price: readonly PackPrice[] =
      priceCoins === undefined
        ? []
        : [{ id: freeId(`${pack.id}@${today}`, records.packPrice), pack: pack.id, from: today, priceCoins }];
    return ok(
      diffRecords(`${tank.id} entered and taken`, records, {
        ...records,
        ...sizeTaken(cells.value, tank),
        tank: putRecords(records.tank, [tank]),
        pack: putRecords(records.pack, price.length > 0 ? [pack] : []),
        packPrice: putRecords(records.packPrice, price),
      }),
    );
  },
});

export const takeAgain = sizeAct<z.infer<typeof OfSize>>({
  name: 'takeAgain',
  says: 'Puts a second column of a tank after its size, by the house.',
  input: OfSize,
  run: ({ cells, size }) =>
    ok(takenAgain(cells.records, size, { label: `${size.tank} taken again`, as: { count: 1 }, locals: [] })),
});

export const copySize = sizeAct<z.infer<typeof OfSize>>({
  name: 'copySize',
  says: 'Puts a second column of a tank after its size, with all its local values.',
  input: OfSize,
  run: ({ cells, size }) => {
    const { count, animalKind, animals } = size;
    const as = withoutUndefined({ count, animalKind, animals });
    const locals = localsOf(cells.records, size.id);
    return ok(takenAgain(cells.records, size, { label: `${size.tank} copied`, as, locals }));
  },
});

interface Copied {
  readonly label: string;
  readonly as: Pick<Size, 'count' | 'animalKind' | 'animals'>;
  readonly locals: readonly LocalValue[];
}

function takenAgain(records: Records, size: Size, { label, as, locals }: Copied): Change {
  const later = sizesOf(records, size.job).filter((each) => each.order > size.order);
  const copy = { ...newSize(records, size.job, size), order: size.order + 1, ...as };
  const moved = later.map((each) => ({ ...each, order: each.order + 1 }));
  return diffRecords(label, records, {
    ...records,
    size: putRecords(records.size, [...moved, copy]),
    localValue: putRecords(records.localValue, copiedLocals(records, locals, copy.id)),
  });
}

export const dropSize = sizeAct<z.infer<typeof OfSize>>({
  name: 'dropSize',
  says: 'Takes a size off a job with its local values; refused where something has been measured of it.',
  input: OfSize,
  run: ({ cells: { records }, size: { id }, called }) => {
    const measured = [...records.actual.values()].some((actual) => actual.size === id);
    if (measured) return failed({ kind: 'size-measured', size: called });
    const locals = localsOf(records, id).map((value) => value.id);
    const lines = [...records.quoteLine.values()].filter((line) => line.size === id).map((line) => line.id);
    return ok(
      diffRecords(`${called} put away`, records, {
        ...records,
        size: putRecords(records.size, [], [id]),
        localValue: putRecords(records.localValue, [], locals),
        quoteLine: putRecords(records.quoteLine, [], lines),
      }),
    );
  },
});

const SetCount = OfSize.extend({ count: z.number() });

export const setCount = sizeAct<z.infer<typeof SetCount>>({
  name: 'setCount',
  says: 'Sets how often a size is built.',
  input: SetCount,
  run: ({ cells: { records }, size, called }, { count }) => {
    const buildable = Number.isInteger(count) && count >= 1 && count <= MOST_BUILDS;
    if (!buildable) return failed({ kind: 'bad-count', size: called, most: MOST_BUILDS });
    return ok(sizeChanged(records, { ...size, count }, `${called} times ${count}`));
  },
});

const SetRecipe = OfSize.extend({ recipe: z.string().nullable().describe('null: that of the job.') });

export const setRecipe = sizeAct<z.infer<typeof SetRecipe>>({
  name: 'setRecipe',
  says: 'Builds a size by another recipe than its job; what is written over stays where that has the line.',
  input: SetRecipe,
  run: ({ cells: { records, job }, size, called }, { recipe }) => {
    if (recipe !== null && !records.recipe.has(recipe))
      return failed({ kind: 'no-recipe', recipe, recipes: [...records.recipe.keys()] });
    const own = recipe === job.recipe ? null : recipe;
    return ok(sizeChanged(records, withFields(size, { recipe: own }), `${called} built by ${own ?? job.recipe}`));
  },
});

const SetAnimals = OfSize.extend({
  animalKind: z.string().nullable().optional().describe('A kind of the animal book; null: none is named.'),
  animals: z
    .int()
    .min(0)
    .max(9_999)
    .nullable()
    .optional()
    .describe('In one build; 0: plants only, null: not said yet.'),
});

export const setAnimals = sizeAct<z.infer<typeof SetAnimals>>({
  name: 'setAnimals',
  says: 'Says which kind of animal a size is for, and how many of them.',
  input: SetAnimals,
  run: ({ cells: { records }, size, called }, { animalKind, animals }) => {
    const to = withFields(size, { animalKind, animals });
    const placed = [...records.placement.values()].find((each) => each.size === size.id);
    if (placed && to.animalKind !== size.animalKind)
      return failed({ kind: 'still-placed', size: called, batch: placed.batch });
    return ok(sizeChanged(records, to, `animals of ${called}`));
  },
});

const NameSize = OfSize.extend({ label: z.string() });

/** The most letters that fit on a card. */
const MOST_LABEL_LETTERS = 40;

export const nameSize = sizeAct<z.infer<typeof NameSize>>({
  name: 'nameSize',
  says: 'Gives a size a name in its job; an empty text calls it by its tank again.',
  input: NameSize,
  run: ({ cells: { records }, size, called }, { label: written }) => {
    const label = written.trim().replaceAll(/\s+/g, ' ');
    const fault = labelFault(records, size, label, called);
    if (fault) return failed(fault);
    const says = label === '' ? `${called} called by its tank, ${size.tank}` : `${called} called ${label}`;
    return ok(sizeChanged(records, { ...size, label }, says));
  },
});

function labelFault(records: Records, size: Size, label: string, called: string): ActFault | undefined {
  if (label === '' && size.label === '') return { kind: 'no-size-name', size: called };
  if (label.length > MOST_LABEL_LETTERS)
    return { kind: 'size-name-long', size: called, letters: label.length, most: MOST_LABEL_LETTERS };
  const others = sizesOf(records, size.job).filter((each) => each.id !== size.id);
  const isTaken = label !== '' && others.some((each) => [each.label, each.tank].includes(label));
  return isTaken ? { kind: 'size-name-taken', name: label } : undefined;
}

/** A size like another, or for a tank: with its recipe, but without its name, count and animals. */
function newSize(
  records: Records,
  job: string,
  { tank, order, recipe }: Pick<Size, 'tank' | 'order' | 'recipe'>,
): Size {
  const id = freeId(`${job}-${tank}`, records.size);
  return { id, job, tank, order, label: '', count: 1, ...(recipe !== undefined && { recipe }) };
}

function localsOf(records: Records, size: string): readonly LocalValue[] {
  return [...records.localValue.values()].filter((value) => value.size === size);
}

function copiedLocals(records: Records, locals: readonly LocalValue[], size: string): readonly LocalValue[] {
  const taken = new Map(records.localValue);
  return locals.map((value) => {
    const copy = { ...value, id: freeId(`${size}.${value.line}`, taken), size };
    taken.set(copy.id, copy);
    return copy;
  });
}

function sizeChanged(records: Records, size: Size, label: string): Change {
  return diffRecords(label, records, { ...records, size: putRecords(records.size, [size]) });
}
