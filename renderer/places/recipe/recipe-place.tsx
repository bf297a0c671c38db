import { Button } from '#renderer/kit/button.tsx';
import { actNames } from '#shared-calc/words/act-names.ts';
import { signal } from '@preact/signals';
import type { PlaceAct } from '#renderer/frame/frame-view.ts';
import type { PlaceView } from '#renderer/frame/page-view.ts';
import { writeRoute, type Route } from '#renderer/frame/place-route.ts';
import { EmptyNote } from '#renderer/kit/empty-note.tsx';
import { findNamed, namedLines } from '#renderer/store/find-place.ts';
import type { PageStore } from '#renderer/store/page-store.ts';
import { openRecipeStore, type RecipeStore } from '#renderer/store/recipe-store.ts';
import { NewRecipeDialog } from './new-recipe-dialog.tsx';
import type { Asked, RecipeAsk } from './recipe-ask.ts';
import { RecipeDialogs } from './recipe-dialogs.tsx';
import { lineHands } from './line-hands.ts';
import { LinePanel } from './line-panel.tsx';
import type { EditHouse } from '#renderer/store/house-ask.ts';
import { focusLine, RecipeList, type Editing } from './recipe-list.tsx';
import { RecipePanel } from './recipe-panel.tsx';

/** `#/recipe/new` asks for the first recipe of a book, and leads back to what a first quote needs. */
const NEW = 'new';

/** A house recipe's lines, edited in place, on a reference size; `#/recipe/H1`. */
export function recipePlace({ book, bench, clock, house }: PageStore): (route: Route) => PlaceView {
  const back = () => requestAnimationFrame(() => backToLine(store));
  const editHouse: EditHouse = (edit, direct, after) => house.edit(edit, direct, { ...after, back });
  const store: RecipeStore = openRecipeStore({ book, clock, display: bench.display, editHouse });
  const editing = signal<Editing | undefined>(undefined);
  const asked: Asked = signal<RecipeAsk | undefined>(undefined);
  const hands = lineHands(book, store, { editing, asked });
  const show = (line: string) => {
    editing.value = undefined;
    goTo(store, line);
  };
  let shown: Route | undefined;
  return (route) => {
    const [named] = route.rest;
    const onBench = bench.opened.value?.worked.source().recipe.id;
    queueMicrotask(() => {
      store.open((named === NEW ? undefined : named) ?? store.recipe.peek()?.id ?? onBench);
      if (named === NEW && route !== shown) asked.value = 'new';
      shown = route;
    });
    const recipe = store.recipe.value;
    if (!recipe) return noRecipe(book, asked, named === NEW ? writeRoute('today') : undefined);
    return {
      about: `${recipe.id} ${recipe.title}`,
      aside: store.tank.value ? `worked on ${store.tank.value.id}` : 'no tank to work it on yet',
      acts: actsOf(book, store, asked),
      work: (
        <>
          <RecipeList store={store} editing={editing} hands={hands} />
          <RecipeDialogs {...{ book, store, editHouse, recipe, asked }} goTo={show} />
        </>
      ),
      sidePanel:
        store.chosen.value === undefined ? (
          <RecipePanel book={book} store={store} asked={asked} />
        ) : (
          <LinePanel
            key={store.faces.value.of(store.chosen.value)?.line.id}
            book={book}
            store={store}
            editHouse={editHouse}
          />
        ),
      find: findLine(store),
    };
  };
}

function findLine(store: RecipeStore): NonNullable<PlaceView['find']> {
  return {
    label: 'Find a line',
    placeholder: 'Find a line',
    options: store.faces.value.all.map((face) => face.label),
    go: (words) => {
      const found = findNamed(namedLines(store.faces.peek()), words);
      if (found) goTo(store, found.line);
      return found !== undefined;
    },
  };
}

/** Answers to questions make a whole recipe; an empty one is filled line by line. */
const firstRecipe = { id: 'H1', title: 'House recipe', note: '' };

function noRecipe(book: PageStore['book'], asked: Asked, next: string | undefined): PlaceView {
  return {
    about: '',
    aside: '',
    acts: [],
    work: (
      <>
        <EmptyNote>
          There is no house recipe in this book. A recipe holds the lines by which every tank is worked.{' '}
          <Button look="plain" onClick={() => (asked.value = 'new')}>
            {actNames.newRecipe}
          </Button>
          {' or '}
          <Button look="plain" onClick={() => void book.doAct('put', { kind: 'recipe', record: firstRecipe })}>
            Begin an empty recipe
          </Button>
        </EmptyNote>
        {asked.value === 'new' && <NewRecipeDialog book={book} close={() => (asked.value = undefined)} next={next} />}
      </>
    ),
  };
}

/** After a dialog the keyboard is on the line that was edited, unless something else has it. */
function backToLine(store: RecipeStore): void {
  const line = store.chosen.peek();
  if (line !== undefined && document.activeElement === document.body) focusLine(line);
}

function actsOf(book: PageStore['book'], store: RecipeStore, asked: Asked): readonly PlaceAct[] {
  const recipe = store.recipe.value;
  if (!recipe) return [];
  const copy = () => {
    void book.doAct('copyRecipe', { recipe: recipe.id }, ({ added }) => {
      const made = added.find((each) => each.kind === 'recipe');
      if (made) location.hash = writeRoute('recipe', made.record.id);
    });
  };
  return [
    {
      label: 'The recipe itself',
      hint: 'Title, note, and the size it is worked on',
      run: () => (store.chosen.value = undefined),
    },
    { label: actNames.newRecipe, run: () => (asked.value = 'new') },
    { label: actNames.findReplace, run: () => (asked.value = 'replace') },
    { label: actNames.copyRecipe, run: copy },
    { label: actNames.addLine, main: true, hint: 'After the chosen line', run: () => (asked.value = 'add line') },
  ];
}

/** Selects a line and scrolls it into view once it is on the page; one that the filter hides shows every line again. */
function goTo(store: RecipeStore, line: string): void {
  if (!store.listed.peek().some((face) => face.line.name === line)) store.from.value = 'all';
  store.chosen.value = line;
  requestAnimationFrame(() => {
    const row = document.querySelector<HTMLElement>(`[data-line="${CSS.escape(line)}"] button`);
    row?.scrollIntoView({ block: 'center' });
    row?.focus();
  });
}
