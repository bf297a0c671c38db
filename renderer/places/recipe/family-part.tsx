import { writeRoute } from '#renderer/frame/place-route.ts';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { Link } from '#renderer/kit/link.tsx';
import { MutedLine } from '#renderer/kit/muted.tsx';
import { chainOf } from '#shared-calc/recipe/family.ts';
import { tankMarks, type LineMark } from '#shared-calc/recipe/family-marks.ts';
import { actNames } from '#shared-calc/words/act-names.ts';
import type { Recipe, Records } from '#shared-calc/records/records.ts';
import type { Asked } from './recipe-ask.ts';
import css from './family-part.module.css';

interface FamilyParts {
  readonly recipe: Recipe;
  readonly records: Records;
  readonly marks: readonly LineMark[];
  readonly asked: Asked;
}

/** The recipes of its family as a tree, what it differs in, and what can be done about it. */
export function FamilyPart({ recipe, records, marks, asked }: FamilyParts) {
  const [eldest = recipe] = chainOf(records, recipe.id);
  const family = treeOf(records, eldest);
  return (
    <section>
      <h3>Family</h3>
      {family.length === 1 ? (
        <MutedLine>It stands alone.</MutedLine>
      ) : (
        <ul class={css['family']}>
          {family.map(({ of, depth }) => (
            <li key={of.id} style={{ '--depth': depth }}>
              {of.id === recipe.id ? (
                <b aria-current="true">{nameOf(of)}</b>
              ) : (
                <Link href={writeRoute('recipe', of.id)}>{nameOf(of)}</Link>
              )}
            </li>
          ))}
        </ul>
      )}
      {recipe.parent !== undefined && (
        <MutedLine>{sayMarks(marks, recipe.parent, tanksApart(records, recipe))}</MutedLine>
      )}
      <Buttons>
        {records.recipe.size > 1 && (
          <Button onClick={() => (asked.value = 'differences')}>{actNames.differences}</Button>
        )}
        {records.recipe.size > 1 && <Button onClick={() => (asked.value = 'take lines')}>{actNames.takeLines}</Button>}
        <Button onClick={() => (asked.value = 'fork')}>{actNames.forkRecipe}</Button>
      </Buttons>
    </section>
  );
}

function nameOf({ id, title }: Recipe): string {
  return `${id} ${title}`;
}

interface Branch {
  readonly of: Recipe;
  readonly depth: number;
}

function treeOf(records: Records, of: Recipe, depth = 0): readonly Branch[] {
  const children = [...records.recipe.values()].filter(({ parent }) => parent === of.id);
  return [{ of, depth }, ...children.flatMap((child) => treeOf(records, child, depth + 1))];
}

/** `3 lines changed, 1 added, 0 left out. H1 has changed 2 of them since.` */
function sayMarks(marks: readonly LineMark[], parent: string, tanks: readonly string[]): string {
  const apart = tanks.length === 0 ? '' : ` It has figures for ${tanks.join(', ')} alone.`;
  if (marks.length === 0)
    return `It is as ${parent} in every line${tanks.length === 0 ? '' : ' for all other tanks'}.${apart}`;
  const count = (is: LineMark['is']) => marks.filter((mark) => mark.is === is).length;
  const parts = [
    count('changed') === 1 ? '1 line changed' : `${count('changed')} lines changed`,
    `${count('added')} added`,
    `${count('left out')} left out`,
  ];
  const moved = marks.filter((mark) => mark.moved.length > 0).length;
  return `${parts.join(', ')}.${moved === 0 ? '' : ` ${parent} has changed ${moved} of them since.`}${apart}`;
}

/** The tanks that the recipe itself has something for alone. */
function tanksApart(records: Records, { id }: Recipe): readonly string[] {
  return [...new Set(tankMarks(records, id).flatMap(({ tanks = [] }) => tanks))].toSorted();
}
