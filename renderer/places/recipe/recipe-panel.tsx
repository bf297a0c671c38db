import { recipesOf } from '#shared-calc/jobs/job-recipes.ts';
import { SettledField } from '#renderer/kit/field.tsx';
import { PickOne } from '#renderer/kit/pick-field.tsx';
import { writeRoute } from '#renderer/frame/place-route.ts';
import type { BookStore } from '#renderer/store/book-store.ts';
import type { RecipeStore } from '#renderer/store/recipe-store.ts';
import { writeSeason } from '#shared-calc/read/read-season.ts';
import type { Recipe, Records } from '#shared-calc/records/records.ts';
import { FamilyPart } from './family-part.tsx';
import type { Asked } from './recipe-ask.ts';
import { HouseLog } from './house-log.tsx';
import { PanelHead, SidePanel } from '#renderer/kit/side-panel.tsx';
import { FactList } from '#renderer/kit/fact-list.tsx';

interface PanelParts {
  readonly book: BookStore;
  readonly store: RecipeStore;
  readonly asked: Asked;
}

/** The recipe itself: which one, its title and note, and the size its figures are computed for. */
export function RecipePanel({ book, store, asked }: PanelParts) {
  const recipe = store.recipe.value;
  if (!recipe) return null;
  const records = book.records.value;
  const recipes = [...records.recipe.values()].map(({ id, title }) => ({
    value: id,
    label: `${id} ${title}`,
  }));
  const tanks = [...records.tank.values()].map(({ id, label }) => ({ value: id, label: `${id} ${label}` }));
  const jobs = [...records.job.values()].filter(
    (job) => recipesOf(records, job).has(recipe.id) && job.state !== 'closed',
  );
  return (
    <SidePanel label="The recipe">
      <PanelHead where="House recipe" title={`${recipe.id} ${recipe.title}`} />
      <section>
        <PickOne
          label="Recipe"
          value={recipe.id}
          options={recipes}
          choose={(id) => (location.hash = writeRoute('recipe', id))}
        />
        <SettledField
          label="Title"
          text={recipe.title}
          settle={(title) => book.doAct('writeRecipe', { recipe: recipe.id, fields: { title } })}
        />
        <SettledField
          label="What it is for"
          text={recipe.note}
          lines
          settle={(note) => book.doAct('writeRecipe', { recipe: recipe.id, fields: { note } })}
        />
        <PickOne label="Worked on" value={store.tank.value?.id ?? ''} options={tanks} choose={store.standOn} />
      </section>
      <FactList
        facts={[
          ...purposeOf(recipe, records),
          ['Lines', store.lines.value.length],
          ['Open jobs built by it', jobs.length === 0 ? 'none' : jobs.map((job) => job.id).join(', ')],
        ]}
      />
      <FamilyPart recipe={recipe} records={records} marks={store.marks.value} asked={asked} />
      <HouseLog book={book} recipe={recipe.id} />
    </SidePanel>
  );
}

/** The animals, tanks and season that a recipe is for, where it says so. */
function purposeOf({ animalKind, tanks, season }: Recipe, records: Records): readonly (readonly [string, string])[] {
  return [
    ...(animalKind === undefined
      ? []
      : [['For animals', records.animalKind.get(animalKind)?.label ?? animalKind] as const]),
    ...(tanks ? [['For tanks', tanks.join(', ')] as const] : []),
    ...(season ? [['For the season', writeSeason(season)] as const] : []),
  ];
}
