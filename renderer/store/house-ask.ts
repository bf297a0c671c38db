import { signal, type ReadonlySignal } from '@preact/signals';
import { runAct, type Act } from '#shared-calc/acts/act.ts';
import { actTable, type ActInputs } from '#shared-calc/acts/all-acts.ts';
import { editsIn } from '#shared-calc/acts/house-log.ts';
import type { LineEdit } from '#shared-calc/jobs/line-edits.ts';
import type { HouseEdit } from '#shared-calc/acts/edit-house.ts';
import { recipesOf } from '#shared-calc/jobs/job-recipes.ts';
import { worksOtherwise } from '#shared-calc/jobs/house-changes.ts';
import type { Change } from '#shared-calc/records/change.ts';
import type { BookStore } from './book-store.ts';

/** An edit of a house that waits for *Put in force*, or to be kept as a proposal. */
export interface AskedEdit {
  readonly edits: readonly LineEdit[];
  readonly recipe: string;
  /** Writes it; returns why not. */
  readonly answer: (note: string, as: ActInputs['editHouse']['as']) => string | undefined;
  /** The dialog is gone. */
  readonly leave: () => void;
}

export interface HouseAsk {
  readonly asked: ReadonlySignal<AskedEdit | undefined>;
  /**
   * Does an edit of a house; where it works otherwise and the recipe has an open job, only after it is asked about.
   * Returns why it is refused.
   */
  readonly edit: EditHouse;
}

export type EditHouse = (edit: HouseEdit, direct: () => string | undefined, after?: AfterEdit) => string | undefined;

export interface AfterEdit {
  /** It is written. */
  readonly written?: (change: Change) => void;
  /** The dialog is gone, whatever was answered. */
  readonly back?: () => void;
}

export function houseAsk(book: Pick<BookStore, 'derived' | 'doAct'>): HouseAsk {
  const asked = signal<AskedEdit | undefined>(undefined);
  return {
    asked,
    edit: (edit, direct, { written, back } = {}) => {
      const derived = book.derived.peek();
      const act: Act = actTable[edit.act];
      const done = runAct(act, derived, edit.input);
      const all = done.ok ? editsIn(derived.records, done.value) : [];
      const edits = all.filter(({ how }) => how === undefined);
      const recipe = edits[0]?.recipe ?? '';
      const recipes = new Set(all.map((each) => each.recipe));
      const isOpen = [...derived.records.job.values()].some(
        (job) => job.state !== 'closed' && [...recipesOf(derived.records, job)].some((each) => recipes.has(each)),
      );
      if (!isOpen || !edits.some(({ before, after }) => worksOtherwise(before, after))) return direct();
      const leave = () => {
        asked.value = undefined;
        back?.();
      };
      const answer: AskedEdit['answer'] = (note, as) => {
        const input = { ...edit, note, as };
        return book.doAct('editHouse', input, (change) => as === 'in force' && written?.(change));
      };
      // The editor closes first, so that the keyboard goes back to its line from the dialog.
      queueMicrotask(() => queueMicrotask(() => (asked.value = { edits, recipe, answer, leave })));
      return undefined;
    },
  };
}
