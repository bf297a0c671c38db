import { useState } from 'preact/hooks';
import { writeRoute } from '#renderer/frame/place-route.ts';
import { AskDialog } from '#renderer/kit/ask-dialog.tsx';
import { Fields, TextField } from '#renderer/kit/field.tsx';
import { PickOne } from '#renderer/kit/pick-field.tsx';
import type { BookStore } from '#renderer/store/book-store.ts';
import type { ActInputs } from '#shared-calc/acts/all-acts.ts';
import type { Recipe } from '#shared-calc/records/records.ts';
import { actNames } from '#shared-calc/words/act-names.ts';

interface ForkParts {
  readonly book: BookStore;
  readonly parent: Recipe;
  readonly close: () => void;
}

/** Asks what a recipe that holds only what differs from its parent is for. */
export function ForkDialog({ book, parent, close }: ForkParts) {
  const records = book.records.value;
  const [wishes, setWishes] = useState({ title: parent.title, animalKind: '', tanks: '', note: '' });
  const [wrong, setWrong] = useState<string>();
  const change = (some: Partial<typeof wishes>) => setWishes({ ...wishes, ...some });
  const kinds = [...records.animalKind.values()].map(({ id, label }) => ({ value: id, label }));
  const run = () => {
    const refused = book.doAct('forkRecipe', inputOf(parent.id, wishes), ({ added }) => {
      const made = added.find((each) => each.kind === 'recipe');
      if (made) location.hash = writeRoute('recipe', made.record.id);
    });
    setWrong(refused);
    return refused === undefined;
  };
  return (
    <AskDialog title={actNames.forkRecipe} does="Make it" run={run} wrong={wrong} close={close}>
      {(enter) => (
        <Fields look="wide">
          <TextField label="Title" text={wishes.title} typing={(title) => change({ title })} enter={enter} />
          {kinds.length > 0 && (
            <PickOne
              label="For animals"
              value={wishes.animalKind}
              options={[{ value: '', label: 'any' }, ...kinds]}
              choose={(animalKind) => change({ animalKind })}
            />
          )}
          <TextField
            label="For tanks"
            hint="as T01, T02; empty for any"
            text={wishes.tanks}
            typing={(tanks) => change({ tanks })}
            enter={enter}
          />
          <TextField label="What it is for" text={wishes.note} typing={(note) => change({ note })} enter={enter} />
        </Fields>
      )}
    </AskDialog>
  );
}

interface Wishes {
  readonly title: string;
  readonly animalKind: string;
  readonly tanks: string;
  readonly note: string;
}

function inputOf(recipe: string, { title, animalKind, tanks, note }: Wishes): ActInputs['forkRecipe'] {
  const codes = tanks.split(/[,\s]+/).filter((code) => code !== '');
  return {
    recipe,
    title,
    note,
    ...(animalKind !== '' && { animalKind }),
    ...(codes.length > 0 && { tanks: codes }),
  };
}
