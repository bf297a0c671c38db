import { kindGiven } from './kind-given.ts';
import { surveyGiven } from './survey-given.ts';
import type { GivenText, SizeAnimals } from '#shared-calc/recipe/column.ts';
import { columnKey, writtenByLine, type JobSheet, type SheetColumn } from './job-sheet.ts';
import { byDay } from './house-changes.ts';
import { recipeOfSize } from './job-recipes.ts';
import { soldHouse, soldQuote, soldRecipes, type SoldHouse } from './sold-house.ts';
import type { HouseChange, Job, Line, LocalValue, QuoteLine, Records, Size } from '#shared-calc/records/records.ts';
import { memo, memos } from '#shared-calc/records/memo.ts';
import { groupOf, groupsOf, type Groups } from '#shared-calc/records/groups.ts';
import { wholeRecipes, type WholeRecipes } from '#shared-calc/recipe/whole-recipe.ts';

/** The sheet of a job and the input of its bench. Unchanged parts are the same objects as before. */
export interface JobSheets {
  readonly sheet: (job: Job) => JobSheet;
  readonly lines: (recipe: string) => readonly Line[];
  /** The usual lines of a job: of its recipe, or as it was sold. A size may have its own (`SheetColumn.lines`). */
  readonly linesOf: (job: Job) => readonly Line[];
  /** The house that a job was sold in; none while it follows its recipe. */
  readonly sold: (job: Job) => SoldHouse | undefined;
}

type Tables = Pick<
  Records,
  | 'recipe'
  | 'line'
  | 'difference'
  | 'size'
  | 'localValue'
  | 'quoteLine'
  | 'tank'
  | 'animalKind'
  | 'issuedQuote'
  | 'houseChange'
  | 'workshop'
>;

interface Index extends Pick<WholeRecipes, 'lines' | 'linesFor'> {
  readonly sizes: Groups<Size>;
  readonly values: Groups<LocalValue>;
  readonly oneOffs: Groups<QuoteLine>;
  readonly changes: Groups<HouseChange>;
}

/** Records by the recipe, job or size they belong to; a table is grouped again only if it changed. */
function openIndex(): (tables: Tables) => Index {
  const sizes = memo<Groups<Size>>();
  const values = memo<Groups<LocalValue>>();
  const oneOffs = memo<Groups<QuoteLine>>();
  const changes = memo<Groups<HouseChange>>();
  return ({ size, localValue, quoteLine, houseChange, ...tables }) => ({
    ...wholeRecipes(tables),
    sizes: sizes([size], (before) =>
      groupsOf(size.values(), { keyOf: ({ job }) => job, inOrder: (one, other) => one.order - other.order }, before),
    ),
    values: values([localValue], (before) =>
      groupsOf(localValue.values(), { keyOf: (value) => boxOwner(value.job, value.size) }, before),
    ),
    oneOffs: oneOffs([quoteLine], (before) => groupsOf(quoteLine.values(), { keyOf: ({ job }) => job }, before)),
    changes: changes([houseChange], (before) =>
      groupsOf(houseChange.values(), { keyOf: ({ recipe }) => recipe, inOrder: byDay }, before),
    ),
  });
}

interface GivenTo {
  readonly kept: SizeAnimals;
  /** Of the size. */
  readonly lines: readonly Line[];
}

/** What each size is for, and what survey and kind give to its lines; cached between changes. */
function givensOf() {
  const surveys = memos<ReadonlyMap<string, GivenText>>();
  const givens = memos<ReadonlyMap<string, GivenText>>();
  const animals = memos<SizeAnimals>();
  return ({ animalKind }: Pick<Tables, 'animalKind'>) => ({
    animalsOf: ({ id, animalKind: named, animals: count }: Size) => {
      const kind = animalKind.get(named ?? '');
      return animals(id, [kind, count], () => ({ ...(kind && { kind }), ...(count !== undefined && { count }) }));
    },
    givenOf: (of: Job, size: string, { kept, lines }: GivenTo) => {
      const { survey, typed } = of;
      const asked = surveys(size, [survey, typed, lines], () => surveyGiven(of, lines));
      return givens(size, [asked, kept, lines], () => new Map([...kindGiven(kept, lines), ...asked]));
    },
  });
}

/** The house that each job was sold in; cached between changes. */
function soldHousesOf() {
  const houses = memos<SoldHouse | undefined>();
  return (tables: Tables, { lines, changes }: Pick<Index, 'lines' | 'changes'>) =>
    (job: Job): SoldHouse | undefined => {
      const quote = soldQuote(tables, job);
      if (!quote) return undefined;
      const coinDecimals = tables.workshop.get('workshop')?.coinDecimals ?? 2;
      const recipes = soldRecipes(quote);
      const now = recipes.map((recipe) => ({ lines: lines(recipe), changes: groupOf(changes, recipe) }));
      return houses(job.id, [quote, coinDecimals, ...now.flatMap((each) => Object.values(each))], () =>
        soldHouse(quote, job.id, { houses: new Map(now.map((each, at) => [recipes[at] ?? '', each])), coinDecimals }),
      );
    };
}

/** The sheets of a book, cached between its changes. */
export function openJobSheets(): (tables: Tables) => JobSheets {
  const indexed = openIndex();
  const givens = givensOf();
  const columns = memos<SheetColumn>();
  const columnLists = memos<readonly SheetColumn[]>();
  const sheets = memos<JobSheet>();
  const sold = soldHousesOf();
  return (tables) => {
    const { lines, linesFor, sizes, values, oneOffs, changes } = indexed(tables);
    const soldOf = sold(tables, { lines, changes });
    const linesOf = (job: Job) => soldOf(job)?.lines ?? lines(job.recipe);
    const { animalsOf, givenOf } = givens(tables);
    const columnsOf = (job: Job): readonly SheetColumn[] => {
      const list: SheetColumn[] = [];
      const [house, usual] = [soldOf(job), linesOf(job)];
      for (const size of groupOf(sizes, job.id)) {
        const { id, tank: code, label, count } = size;
        const tank = house?.tanks.get(code) ?? tables.tank.get(code);
        if (!tank) continue;
        const kept = animalsOf(size);
        const recipe = recipeOfSize(job, size);
        const own = house?.linesOf(recipe, code) ?? linesFor(recipe, code);
        const parts = {
          size: id,
          key: columnKey(tank, list),
          tank,
          label,
          count,
          locals: writtenByLine(groupOf(values, boxOwner(job.id, id))),
          given: givenOf(job, id, { kept, lines: own }),
          animals: kept,
          ...(recipe !== job.recipe && { recipe }),
          ...(own !== usual && { lines: own }),
        };
        list.push(columns(id, Object.values(parts), () => parts));
      }
      return columnLists(job.id, list, () => list);
    };
    return {
      lines,
      linesOf,
      sold: soldOf,
      sheet: (job) => {
        const whole = writtenByLine(groupOf(values, boxOwner(job.id)));
        const parts = { columns: columnsOf(job), whole, oneOffs: groupOf(oneOffs, job.id) };
        return sheets(job.id, [job, ...Object.values(parts)], () => ({ job, recipe: job.recipe, ...parts }));
      },
    };
  };
}

function boxOwner(job: string, size = ''): string {
  return `${job}\n${size}`;
}

/** A job of the book with its sizes in order. Sizes whose tank is no longer in the tank book are left out. */
export function jobSheet(records: Tables, job: Job): JobSheet {
  return openJobSheets()(records).sheet(job);
}
