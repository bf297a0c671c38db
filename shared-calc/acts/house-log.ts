import type { Day } from '#shared-calc/calendar/day.ts';
import { changesOf, isOtherLine, lineOfChange } from '#shared-calc/jobs/house-changes.ts';
import { lineEdits, type LineEdit } from '#shared-calc/jobs/line-edits.ts';
import { bodyOf } from '#shared-calc/jobs/sold-house.ts';
import { withDescendants } from '#shared-calc/recipe/family.ts';
import { renamedLine } from '#shared-calc/recipe/rename-line.ts';
import {
  added,
  applyChange,
  emptyChange,
  squashChanges,
  updated,
  type Added,
  type Change,
} from '#shared-calc/records/change.ts';
import type { HouseChange, Line, Records } from '#shared-calc/records/records.ts';
import { sameData } from '#shared-calc/records/same-data.ts';
import { nextNumber } from './next-number.ts';

/** An edit as the log has it: by hand, or come from the parent. */
export type LoggedEdit = LineEdit & Pick<HouseChange, 'how' | 'of'>;

type Rename = readonly [from: string, to: string];

/**
 * The lines that a change edits, in its recipes and in those that inherit from them; not those that it only moves or
 * renames, nor those of a recipe that comes or goes.
 */
export function editsIn(records: Records, change: Change): readonly LoggedEdit[] {
  const written = recipesWritten(change);
  if (written.size === 0) return [];
  const renames = renamesIn(change);
  const edits = lineEdits(records, applyChange(records, change)).filter(({ before, after }) => {
    const renamed = before && renames.reduce((line, [from, to]) => renamedLine(line, from, to), before);
    return isOtherLine(renamed, after);
  });
  return edits.map((edit): LoggedEdit => {
    const of = records.recipe.get(edit.recipe)?.parent;
    return written.has(edit.recipe) || of === undefined ? edit : { ...edit, how: 'from parent', of };
  });
}

/** The recipes whose own lines, differences or parent a change writes. */
function recipesWritten(change: Change): ReadonlySet<string> {
  const records = [...change.added, ...change.removed, ...change.updated.map(({ kind, to }) => added(kind, to))];
  return new Set(
    records.flatMap((each) => {
      if (each.kind === 'line' || each.kind === 'difference') return each.record.recipe;
      return each.kind === 'recipe' ? each.record.id : [];
    }),
  );
}

function renamesIn({ updated: changed }: Change): readonly Rename[] {
  return changed.flatMap((each): readonly Rename[] =>
    each.kind === 'line' && each.from.name !== each.to.name ? [[each.from.name, each.to.name]] : [],
  );
}

/** A record of the log, but for its number. */
export type NewHouseChange = Omit<HouseChange, 'id' | 'answers'>;

/** Records of the log under the next numbers. */
export function numbered(
  { houseChange }: Pick<Records, 'houseChange'>,
  changes: readonly NewHouseChange[],
): readonly Added[] {
  const first = Number(nextNumber('HC', houseChange.keys(), 4));
  return changes.map((change, at) =>
    added('houseChange', { id: `HC-${String(first + at).padStart(4, '0')}`, ...change, answers: [] }),
  );
}

/** A change with what the logs of its recipes say of it. */
export function logged(records: Records, change: Change, today: Day): Change {
  const written = new Set(changesIn(change).map((each) => lineOfChange(each)?.id));
  const edits = editsIn(records, change).filter((edit) => !written.has(lineOfChange(edit)?.id));
  const renamed = renamedLog(records, change);
  if (edits.length === 0 && renamed.updated.length === 0) return change;
  const steps: Change[] = [change, renamed];
  // The change may bring entries of its own, under the next numbers.
  let now = applyChange(applyChange(records, change), renamed);
  for (const edit of edits) {
    const step = editLogged(now, edit, today);
    now = applyChange(now, step);
    steps.push(step);
  }
  return squashChanges(change.label, steps);
}

function changesIn(change: Change): readonly HouseChange[] {
  return [
    ...change.added.flatMap((each) => (each.kind === 'houseChange' ? [each.record] : [])),
    ...change.updated.flatMap((each) => (each.kind === 'houseChange' ? [each.to] : [])),
  ];
}

/** Edits of one line by hand on one day are one change; back at the start it is none. */
function editLogged(records: Records, edit: LoggedEdit, today: Day): Change {
  const same = changesOf(records, edit.recipe).find((each) => joins(records, each, edit, today));
  const said = emptyChange('');
  if (!same) return { ...said, added: numbered(records, [{ ...edit, on: today, note: '', inForceOn: today }]) };
  const { after: _, ...rest } = same;
  const to: HouseChange = { ...rest, ...(edit.after && { after: edit.after }) };
  const isBack = !isOtherLine(to.before, to.after);
  return isBack
    ? { ...said, removed: [added('houseChange', same)] }
    : { ...said, updated: [updated('houseChange', same, to)] };
}

function joins(records: Records, change: HouseChange, edit: LoggedEdit, today: Day): boolean {
  const { id, on, inForceOn, note, fromJob, answers } = change;
  const isByHand = note === '' && fromJob === undefined && on === today && inForceOn === today;
  return isByHand && isOfSame(change, edit) && answers.length === 0 && !isQuoted(records, id, today);
}

function isOfSame(one: HouseChange, other: LoggedEdit): boolean {
  return lineOfChange(one)?.id === lineOfChange(other)?.id && one.how === other.how && sameData(one.for, other.for);
}

/** What a quote stands on is not rewritten. */
function isQuoted({ issuedQuote }: Records, id: string, today: Day): boolean {
  const todays = [...issuedQuote.values()].filter(({ issuedOn }) => issuedOn === today);
  return todays.some((quote) => bodyOf(quote)?.changes?.includes(id) === true);
}

/** The log names lines as they are named now. */
function renamedLog(records: Records, change: Change): Change {
  const renames = renamesIn(change);
  const named = change.updated.flatMap((each) => (each.kind === 'line' ? [each.to.recipe] : []));
  const recipes = new Set(named.flatMap((recipe) => withDescendants(records, recipe)));
  if (renames.length === 0) return emptyChange('');
  const inLog = [...records.houseChange.values()].filter(({ recipe }) => recipes.has(recipe));
  const renamed = (line: Line) => renames.reduce((so, [from, to]) => renamedLine(so, from, to), line);
  const rewritten = inLog.map((each): [HouseChange, HouseChange] => [
    each,
    {
      ...each,
      ...(each.before && { before: renamed(each.before) }),
      ...(each.after && { after: renamed(each.after) }),
    },
  ]);
  return {
    ...emptyChange(''),
    updated: rewritten.flatMap(([from, to]) => (isSameLog(from, to) ? [] : [updated('houseChange', from, to)])),
  };
}

function isSameLog(one: HouseChange, other: HouseChange): boolean {
  return !isOtherLine(one.before, other.before) && !isOtherLine(one.after, other.after);
}
