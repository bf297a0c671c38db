import type { Asked } from './recipe-ask.ts';
import type { EntryMenu } from '#renderer/kit/context-menu.tsx';
import type { BookStore } from '#renderer/store/book-store.ts';
import type { LineFace } from '#renderer/store/line-faces.ts';
import type { RecipeStore } from '#renderer/store/recipe-store.ts';
import { actNames } from '#shared-calc/words/act-names.ts';

export interface LineHands {
  /** What can be done with a line. */
  readonly menu: (face: LineFace) => EntryMenu;
  /** What can be done with a section. */
  readonly section: (section: string) => EntryMenu['acts'];
  /** Puts a line before another, by their names; without one at the end. */
  readonly put: (line: string, before: string | undefined) => void;
}

interface HandsParts {
  readonly editing: { value: { readonly line: string } | undefined };
  readonly asked: Asked;
}

/** What mouse and menu do with the lines of a recipe. */
export function lineHands(
  book: Pick<BookStore, 'doAct'>,
  store: Pick<RecipeStore, 'faces'>,
  { editing, asked }: HandsParts,
): LineHands {
  const idOf = (name: string | undefined) => (name === undefined ? undefined : store.faces.peek().of(name)?.line.id);
  return {
    menu: ({ line, label }) => {
      const move = (to: 'up' | 'down') => () => void book.doAct('moveLine', { line: line.id, to });
      return {
        label,
        acts: [
          { says: actNames.write, keys: 'F2', run: () => (editing.value = { line: line.name }) },
          { says: actNames.addLine, run: () => (asked.value = 'add line') },
          { says: 'Move up', run: move('up') },
          { says: 'Move down', run: move('down') },
        ],
      };
    },
    section: (section) => [{ says: actNames.removeSection, run: () => (asked.value = { section }) }],
    put: (name, before) => {
      const line = idOf(name);
      if (line !== undefined) book.doAct('placeLine', { line, before: idOf(before) ?? null });
    },
  };
}
