import { withoutUndefined } from '#shared-calc/records/without-undefined.ts';
import type { HouseChange, Job, Line, Records } from '#shared-calc/records/records.ts';
import { sameData } from '#shared-calc/records/same-data.ts';
import { bySortKey } from '#shared-calc/records/sort-key.ts';
import { isBefore } from './move-job.ts';

/** Where a line stands, what is told of it and how it is shown: no figure of a job hangs on them. */
const layout: ReadonlySet<string> = new Set(['order', 'section', 'shownFirst', 'inset']);
const told: ReadonlySet<string> = new Set([...layout, 'label', 'note', 'source', 'sourceNote']);

/** Whether a line differs in more than its place. */
export function isOtherLine(before: Line | undefined, after: Line | undefined): boolean {
  return differ(before, after, layout);
}

/** Whether a line differs in anything that a job is worked from. */
export function worksOtherwise(before: Line | undefined, after: Line | undefined): boolean {
  return differ(before, after, told);
}

function differ(before: Line | undefined, after: Line | undefined, apart: ReadonlySet<string>): boolean {
  if (!before || !after) return before !== after;
  return !sameData(without(before, apart), without(after, apart));
}

function without(line: Line, keys: ReadonlySet<string>): object {
  return withoutUndefined(Object.fromEntries(Object.entries(line).filter(([key]) => !keys.has(key))));
}

/** The line that a change is of; before or after is always there. */
export function lineOfChange({ before, after }: Pick<HouseChange, 'before' | 'after'>): Line | undefined {
  return after ?? before;
}

/** The changes of a recipe, in order of the day from which they are in force; proposals last. */
export function changesOf({ houseChange }: Pick<Records, 'houseChange'>, recipe: string): readonly HouseChange[] {
  return [...houseChange.values()].filter((change) => change.recipe === recipe).toSorted(byDay);
}

export function byDay(one: HouseChange, other: HouseChange): number {
  const [day, next] = [one.inForceOn ?? '~', other.inForceOn ?? '~'];
  if (day !== next) return day < next ? -1 : 1;
  return one.id.length - other.id.length || (one.id < other.id ? -1 : 1);
}

export function answerOf({ answers }: HouseChange, job: string): HouseChange['answers'][number] | undefined {
  return answers.find((each) => each.job === job);
}

/** The lines of a house with a change; a line keeps its place and its name there. */
export function withChange(lines: readonly Line[], change: Pick<HouseChange, 'before' | 'after'>): readonly Line[] {
  const id = lineOfChange(change)?.id;
  const { after } = change;
  const known = lines.find((line) => line.id === id);
  if (!after) return lines.filter((line) => line.id !== id);
  if (!known) return [...lines, after].toSorted(bySortKey);
  const { order, section } = known;
  return lines.map((line) => (line === known ? { ...after, order, section } : line));
}

/** From *accepted* until it is closed. */
export function isSoldState(state: Job['state']): boolean {
  return !isBefore(state, 'accepted') && state !== 'closed';
}

/** Whether a job may still take a change of its house: sold, and not being built yet. */
export function takesChanges({ state }: Pick<Job, 'state'>): boolean {
  return isSoldState(state) && isBefore(state, 'built');
}
