import { Button } from '#renderer/kit/button.tsx';
import { actNames } from '#shared-calc/words/act-names.ts';
import { signal, type Signal } from '@preact/signals';
import type { PlaceAct } from '#renderer/frame/frame-view.ts';
import type { PlaceView } from '#renderer/frame/page-view.ts';
import { writeRoute, type Route } from '#renderer/frame/place-route.ts';
import { EmptyNote } from '#renderer/kit/empty-note.tsx';
import { findNamed, namedLines } from '#renderer/store/find-place.ts';
import type { PageStore } from '#renderer/store/page-store.ts';
import { openRecipeStore, type RecipeStore } from '#renderer/store/recipe-store.ts';
import type { Recipe } from '#shared-calc/records/records.ts';
import { DifferencesDialog } from './differences-dialog.tsx';
import type { FamilyAsk } from './family-part.tsx';
import { ForkDialog } from './fork-dialog.tsx';
import { FindReplace } from './find-replace.tsx';
import { lineHands } from './line-hands.ts';
import { LinePanel } from './line-panel.tsx';
import type { EditHouse } from '#renderer/store/house-ask.ts';
import { focusLine, RecipeList, type Editing } from './recipe-list.tsx';
import { RecipePanel } from './recipe-panel.tsx';

/** A house recipe's lines, edited in place, on a reference size; `#/recipe/H1`. */
export function recipePlace({ book, bench, clock, house }: PageStore): (route: Route) => PlaceView {
  const back = () => requestAnimationFrame(() => backToLine(store));
  const editHouse: EditHouse = (edit, direct, after) => house.edit(edit, direct, { ...after, back });
  const store: RecipeStore = openRecipeStore({ book, clock, display: bench.display, editHouse });
  const editing = signal<Editing | undefined>(undefined);
  const replacing = signal(false);
  const hands = lineHands(book, store, editing);
  const family = signal<FamilyAsk | undefined>(undefined);
  return ({ rest }) => {
    const onBench = bench.opened.value?.worked.source().recipe.id;
    queueMicrotask(() => store.open(rest[0] ?? store.recipe.peek()?.id ?? onBench));
    const recipe = store.recipe.value;
    if (!recipe) return noRecipe(book);
    return {
      about: `${recipe.id} ${recipe.title.toLowerCase()}`,
      aside: store.tank.value ? `worked on ${store.tank.value.id}` : 'no tank to work it on yet',
      acts: actsOf(book, store, { editing, replacing }),
      work: (
        <>
          <RecipeList store={store} editing={editing} hands={hands} />
          <FamilyDialogs book={book} store={store} recipe={recipe} asked={family} />
          {replacing.value && <FindReplace book={book} recipe={recipe.id} close={() => (replacing.value = false)} />}
        </>
      ),
      sidePanel:
        store.chosen.value === undefined ? (
          <RecipePanel book={book} store={store} family={family} />
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

function noRecipe(book: PageStore['book']): PlaceView {
  return {
    about: '',
    aside: '',
    acts: [],
    work: (
      <EmptyNote>
        There is no house recipe in this book. A recipe holds the lines by which every tank is worked.{' '}
        <Button look="plain" onClick={() => void book.doAct('put', { kind: 'recipe', record: firstRecipe })}>
          Begin an empty recipe
        </Button>
      </EmptyNote>
    ),
  };
}

interface DialogParts extends Pick<PageStore, 'book'> {
  readonly store: RecipeStore;
  readonly recipe: Recipe;
  readonly asked: Signal<FamilyAsk | undefined>;
}

function FamilyDialogs({ book, store, recipe, asked }: DialogParts) {
  const close = () => (asked.value = undefined);
  if (asked.value === 'fork') return <ForkDialog book={book} parent={recipe} close={close} />;
  if (asked.value === undefined) return null;
  return <DifferencesDialog book={book} recipe={recipe} tank={store.tank.value?.id} close={close} />;
}

/** After a dialog the keyboard is on the line that was edited, unless something else has it. */
function backToLine(store: RecipeStore): void {
  const line = store.chosen.peek();
  if (line !== undefined && document.activeElement === document.body) focusLine(line);
}

interface Shown {
  readonly editing: { value: Editing | undefined };
  /** The dialog to find and replace is open. */
  readonly replacing: { value: boolean };
}

function actsOf(book: PageStore['book'], store: RecipeStore, { editing, replacing }: Shown): readonly PlaceAct[] {
  const recipe = store.recipe.value;
  if (!recipe) return [];
  const copy = () => {
    void book.doAct('copyRecipe', { recipe: recipe.id }, ({ added }) => {
      const made = added.find((each) => each.kind === 'recipe');
      if (made) location.hash = writeRoute('recipe', made.record.id);
    });
  };
  const add = () => {
    const after = store.chosen.peek();
    void book.doAct('addLine', { recipe: recipe.id, after }, ({ added: [made] }) => {
      editing.value = undefined;
      if (made?.kind === 'line') goTo(store, made.record.name);
    });
  };
  return [
    {
      label: 'The recipe itself',
      hint: 'Title, note, and the size it is worked on',
      run: () => (store.chosen.value = undefined),
    },
    { label: actNames.findReplace, run: () => (replacing.value = true) },
    { label: actNames.copyRecipe, run: copy },
    { label: actNames.addLine, main: true, hint: 'After the chosen line', run: add },
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
