import type { HeldFields } from '#shared-calc/fields/difference.ts';
import type { Difference, Line, Records } from '#shared-calc/records/records.ts';
import { sameData } from '#shared-calc/records/same-data.ts';
import { linesOf } from './lines-of.ts';
import { heldOf, linesAbove } from './write-lines.ts';

/** How a line of a recipe stands to its parent. */
export interface LineMark {
  readonly line: string;
  readonly name: string;
  readonly is: 'changed' | 'added' | 'left out';
  /** The line of the parent as it is now, under the id that it has here; of a difference for some tanks the usual line. */
  readonly parent?: Line;
  /** The tanks that it is for, if it is for some alone. */
  readonly tanks?: readonly string[];
  /** Fields of the parent that the recipe changes and that have changed there since, or all of a line it leaves out. */
  readonly moved: readonly string[];
  readonly mark?: Difference;
}

/** What a recipe changes, adds and leaves out of its parent for all tanks, in order. */
export function lineMarks(records: Records, recipe: string): readonly LineMark[] {
  if (records.recipe.get(recipe)?.parent === undefined) return [];
  const above = linesAbove(records, recipe);
  const marks = [...records.difference.values()].filter((mark) => mark.recipe === recipe && mark.for === undefined);
  const byLine = new Map(marks.map((mark) => [mark.line, mark]));
  const here = linesOf(records, recipe).flatMap((line): readonly LineMark[] => {
    const [parent, mark] = [above.get(line.id), byLine.get(line.id)];
    const { id, name } = line;
    if (!parent || records.line.has(id)) return [{ line: id, name, is: 'added', moved: [] }];
    return mark ? [{ line: id, name, is: 'changed', parent, moved: movedIn(parent, mark), mark }] : [];
  });
  const out = marks.flatMap((mark): readonly LineMark[] => {
    const parent = above.get(mark.line);
    if (mark.what !== 'left out' || !parent) return [];
    return [{ line: mark.line, name: parent.name, is: 'left out', parent, moved: movedIn(parent, mark), mark }];
  });
  return [...here, ...out];
}

/** What a recipe has otherwise for some tanks alone, in order; compared with what it has for the others. */
export function tankMarks(records: Records, recipe: string): readonly LineMark[] {
  const marks = [...records.difference.values()].filter((mark) => mark.recipe === recipe && mark.what === 'changed');
  const byLine = Map.groupBy(marks, (mark) => mark.line);
  return linesOf(records, recipe).flatMap((parent) =>
    (byLine.get(parent.id) ?? []).flatMap((mark): readonly LineMark[] => {
      const { id: line, name } = parent;
      if (mark.for === undefined) return [];
      return [{ line, name, is: 'changed', parent, tanks: mark.for, moved: movedIn(parent, mark), mark }];
    }),
  );
}

/** Where a line stands is nothing to compare. */
const layout = new Set(['order', 'section', 'shownFirst', 'inset']);

function movedIn(parent: Line, { was }: Difference): readonly string[] {
  const before = new Map<string, unknown>(Object.entries(was));
  const now = new Map<string, unknown>(Object.entries(heldOf(parent, [...before.keys()])));
  return [...before.keys()].filter((key) => !layout.has(key) && !sameData(before.get(key), now.get(key)));
}

/** The difference, compared with the parent as it is now. */
export function comparedMark(mark: Difference, parent: Line): Difference {
  const was: HeldFields = heldOf(parent, mark.what === 'left out' ? undefined : Object.keys(mark.was));
  return { ...mark, was };
}
