import { kindGiven } from './kind-given.ts';
import { surveyGiven } from './survey-given.ts';
import type { GivenText, SizeAnimals } from '#shared-calc/recipe/column.ts';
import { columnKey, writtenByLine, type JobSheet, type SheetColumn } from './job-sheet.ts';
import { byDay } from './house-changes.ts';
import { soldHouse, soldQuote, type SoldHouse } from './sold-house.ts';
import type { HouseChange, Job, Line, LocalValue, QuoteLine, Records, Size } from '#shared-calc/records/records.ts';
import { memo, memos } from '#shared-calc/records/memo.ts';
import { groupOf, groupsOf, type Groups } from '#shared-calc/records/groups.ts';
import { wholeRecipes } from '#shared-calc/recipe/whole-recipe.ts';

/** The sheet of a job and the input of its bench. Unchanged parts are the same objects as before. */
export interface JobSheets {
  readonly sheet: (job: Job) => JobSheet;
  readonly lines: (recipe: string) => readonly Line[];
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

interface Index {
  readonly lines: (recipe: string) => readonly Line[];
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
    lines: wholeRecipes(tables).lines,
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

/** What each size is for, and what survey and kind give to its lines; cached between changes. */
function givensOf() {
  const surveys = memos<ReadonlyMap<string, GivenText>>();
  const givens = memos<ReadonlyMap<string, GivenText>>();
  const animals = memos<SizeAnimals>();
  return ({ animalKind }: Pick<Tables, 'animalKind'>, linesOf: (job: Job) => readonly Line[]) => ({
    animalsOf: ({ id, animalKind: named, animals: count }: Size) => {
      const kind = animalKind.get(named ?? '');
      return animals(id, [kind, count], () => ({ ...(kind && { kind }), ...(count !== undefined && { count }) }));
    },
    givenOf: (of: Job) => {
      const { id: job, survey } = of;
      const lines = linesOf(of);
      const asked = surveys(job, [survey, lines], () => surveyGiven(survey, lines));
      return (size: string, kept: SizeAnimals) =>
        givens(size, [asked, kept, lines], () => new Map([...kindGiven(kept, lines), ...asked]));
    },
  });
}

/** The sheets of a book, cached between its changes. */
export function openJobSheets(): (tables: Tables) => JobSheets {
  const indexed = openIndex();
  const givens = givensOf();
  const columns = memos<SheetColumn>();
  const columnLists = memos<readonly SheetColumn[]>();
  const sheets = memos<JobSheet>();
  const houses = memos<SoldHouse | undefined>();
  return (tables) => {
    const { lines, sizes, values, oneOffs, changes } = indexed(tables);
    const coinDecimals = tables.workshop.get('workshop')?.coinDecimals ?? 2;
    const writtenOf = (job: string, size?: string) => writtenByLine(groupOf(values, boxOwner(job, size)));
    const soldOf = (job: Job): SoldHouse | undefined => {
      const quote = soldQuote(tables, job);
      const now = { lines: lines(job.recipe), changes: groupOf(changes, job.recipe), coinDecimals };
      return quote && houses(job.id, [quote, ...Object.values(now)], () => soldHouse(quote, job.id, now));
    };
    const { animalsOf, givenOf } = givens(tables, (job) => soldOf(job)?.lines ?? lines(job.recipe));
    const columnsOf = (job: Job): readonly SheetColumn[] => {
      const list: SheetColumn[] = [];
      const givenTo = givenOf(job);
      const sold = soldOf(job);
      for (const size of groupOf(sizes, job.id)) {
        const { id, tank: code, label, count } = size;
        const tank = sold?.tanks.get(code) ?? tables.tank.get(code);
        if (!tank) continue;
        const kept = animalsOf(size);
        const parts = {
          size: id,
          key: columnKey(tank, list),
          tank,
          label,
          count,
          locals: writtenOf(job.id, id),
          given: givenTo(id, kept),
          animals: kept,
        };
        list.push(columns(id, Object.values(parts), () => parts));
      }
      return columnLists(job.id, list, () => list);
    };
    return {
      lines,
      sold: soldOf,
      sheet: (job) => {
        const parts = { columns: columnsOf(job), whole: writtenOf(job.id), oneOffs: groupOf(oneOffs, job.id) };
        return sheets(job.id, [job, ...Object.values(parts)], () => ({ job, recipe: job.recipe, ...parts }));
      },
    };
  };
}

function boxOwner(job: string, size: string | undefined): string {
  return `${job}\n${size ?? ''}`;
}

/** A job of the book with its sizes in order. Sizes whose tank is no longer in the tank book are left out. */
export function jobSheet(records: Tables, job: Job): JobSheet {
  return openJobSheets()(records).sheet(job);
}
