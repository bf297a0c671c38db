import type { Day } from '#shared-calc/calendar/day.ts';
import { changesOf, isOtherLine, lineOfChange } from '#shared-calc/jobs/house-changes.ts';
import { bodyOf } from '#shared-calc/jobs/sold-house.ts';
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
import { nextNumber } from './next-number.ts';

/** A line of a house before and after an edit; one of them is left out where it is new or gone. */
export interface LineEdit {
  readonly recipe: string;
  readonly before?: Line;
  readonly after?: Line;
}

type Rename = readonly [from: string, to: string];

/** The lines that a change edits; not those that it only moves or renames, nor those of a recipe that comes or goes. */
export function lineEdits(change: Change): readonly LineEdit[] {
  const whole = new Set([...change.added, ...change.removed].flatMap(recipeIn));
  const renames = renamesIn(change);
  const edits = [
    ...change.added.flatMap((each) => (each.kind === 'line' ? [editOf(undefined, each.record)] : [])),
    ...change.removed.flatMap((each) => (each.kind === 'line' ? [editOf(each.record, undefined)] : [])),
    ...change.updated.flatMap((each) => (each.kind === 'line' ? [editOf(each.from, each.to)] : [])),
  ];
  return edits.filter(({ recipe, before, after }) => {
    const renamed = before && renames.reduce((line, [from, to]) => renamedLine(line, from, to), before);
    return !whole.has(recipe) && isOtherLine(renamed, after);
  });
}

function recipeIn({ kind, record }: Added): readonly string[] {
  return kind === 'recipe' ? [record.id] : [];
}

function renamesIn({ updated: changed }: Change): readonly Rename[] {
  return changed.flatMap((each): readonly Rename[] =>
    each.kind === 'line' && each.from.name !== each.to.name ? [[each.from.name, each.to.name]] : [],
  );
}

function editOf(before: Line | undefined, after: Line | undefined): LineEdit {
  return { recipe: (after ?? before)?.recipe ?? '', ...(before && { before }), ...(after && { after }) };
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
  const edits = lineEdits(change).filter((edit) => !written.has(lineOfChange(edit)?.id));
  const renamed = renamedLog(records, change);
  if (edits.length === 0 && renamed.updated.length === 0) return change;
  const steps: Change[] = [change, renamed];
  let now = applyChange(records, renamed);
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
function editLogged(records: Records, edit: LineEdit, today: Day): Change {
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

function joins(records: Records, change: HouseChange, edit: LineEdit, today: Day): boolean {
  const { id, on, inForceOn, note, fromJob, answers } = change;
  const isByHand = note === '' && fromJob === undefined && on === today && inForceOn === today;
  const isSameLine = lineOfChange(change)?.id === lineOfChange(edit)?.id;
  return isByHand && isSameLine && answers.length === 0 && !isQuoted(records, id, today);
}

/** What a quote stands on is not rewritten. */
function isQuoted({ issuedQuote }: Records, id: string, today: Day): boolean {
  const todays = [...issuedQuote.values()].filter(({ issuedOn }) => issuedOn === today);
  return todays.some((quote) => bodyOf(quote)?.changes?.includes(id) === true);
}

/** The log names lines as they are named now. */
function renamedLog(records: Records, change: Change): Change {
  const renames = renamesIn(change);
  const recipes = new Set(change.updated.flatMap((each) => (each.kind === 'line' ? [each.to.recipe] : [])));
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
