import type { EditHouse } from '#renderer/store/house-ask.ts';
import type { PageStore } from '#renderer/store/page-store.ts';
import type { RecipeStore } from '#renderer/store/recipe-store.ts';
import type { Recipe } from '#shared-calc/records/records.ts';
import { AddLineDialog } from './add-line-dialog.tsx';
import { DifferencesDialog } from './differences-dialog.tsx';
import { FindReplace } from './find-replace.tsx';
import { ForkDialog } from './fork-dialog.tsx';
import { NewRecipeDialog } from './new-recipe-dialog.tsx';
import type { Asked } from './recipe-ask.ts';
import { RemoveSectionDialog } from './remove-section-dialog.tsx';
import { TakeLinesDialog } from './take-lines-dialog.tsx';

interface DialogParts extends Pick<PageStore, 'book'> {
  readonly store: RecipeStore;
  readonly editHouse: EditHouse;
  readonly recipe: Recipe;
  readonly asked: Asked;
  readonly goTo: (line: string) => void;
}

/** The dialog of the place that is open. */
export function RecipeDialogs({ book, store, editHouse, recipe, asked, goTo }: DialogParts) {
  const close = () => (asked.value = undefined);
  const ask = asked.value;
  if (ask === undefined) return null;
  const { id } = recipe;
  if (typeof ask === 'object') {
    const gone = () => (store.chosen.value = undefined);
    return <RemoveSectionDialog {...{ book, editHouse, gone, close }} recipe={id} section={ask.section} />;
  }
  switch (ask) {
    case 'new':
      return <NewRecipeDialog book={book} close={close} />;
    case 'fork':
      return <ForkDialog book={book} parent={recipe} close={close} />;
    case 'differences':
      return <DifferencesDialog book={book} recipe={recipe} tank={store.tank.value?.id} close={close} />;
    case 'take lines':
      return <TakeLinesDialog {...{ book, editHouse, recipe, goTo, close }} />;
    case 'add line':
      return <AddLineDialog book={book} store={store} recipe={id} goTo={goTo} close={close} />;
    case 'replace':
      return <FindReplace {...{ book, editHouse, close }} recipe={id} />;
  }
}
