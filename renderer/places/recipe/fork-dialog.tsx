import { useState } from 'preact/hooks';
import { writeRoute } from '#renderer/frame/place-route.ts';
import { AskDialog } from '#renderer/kit/ask-dialog.tsx';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { Fields, TextField } from '#renderer/kit/field.tsx';
import { PickOne, type PickOption } from '#renderer/kit/pick-field.tsx';
import type { BookStore } from '#renderer/store/book-store.ts';
import type { ActInputs } from '#shared-calc/acts/all-acts.ts';
import { readSeason } from '#shared-calc/read/read-season.ts';
import { ok } from '#shared-calc/result.ts';
import { sayEntryFault } from '#shared-calc/words/say-entry-fault.ts';
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
  const [wishes, setWishes] = useState<Wishes>({ ...nothingSaid, title: parent.title });
  const [wrong, setWrong] = useState<string>();
  const change = (some: Partial<typeof wishes>) => setWishes({ ...wishes, ...some });
  const kinds = [...records.animalKind.values()].map(({ id, label }) => ({ value: id, label }));
  const tanks = [...records.tank.values()].map(({ id, label }) => ({ value: id, label }));
  const run = () => {
    const season = wishes.season.trim() === '' ? ok(undefined) : readSeason(wishes.season, 'For the season');
    if (!season.ok) {
      setWrong(sayEntryFault(season.fault));
      return false;
    }
    const refused = book.doAct('forkRecipe', inputOf(parent.id, wishes, season.value), ({ added }) => {
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
          <ForTanks options={tanks} picked={wishes.tanks} pick={(picked) => change({ tanks: picked })} />
          <TextField
            label="For the season"
            hint="its first and last day, as 10-01 to 03-31; empty for the whole year"
            text={wishes.season}
            typing={(season) => change({ season })}
            enter={enter}
          />
          <TextField label="What it is for" text={wishes.note} typing={(note) => change({ note })} enter={enter} />
        </Fields>
      )}
    </AskDialog>
  );
}

interface ForTanksParts {
  readonly options: readonly PickOption[];
  readonly picked: readonly string[];
  readonly pick: (tanks: readonly string[]) => void;
}

/** The tanks that the recipe is for, picked from the tank book; none is any. */
function ForTanks({ options, picked, pick }: ForTanksParts) {
  return (
    <>
      <PickOne
        label="For tanks"
        placeholder="Code or name, such as hexagon"
        {...(picked.length === 0 && { hint: 'none picked: for any' })}
        value=""
        options={options.filter(({ value }) => !picked.includes(value))}
        choose={(tank) => pick([...picked, tank])}
      />
      {picked.length > 0 && (
        <Buttons>
          {picked.map((tank) => (
            <Button key={tank} look="plain" onClick={() => pick(picked.filter((each) => each !== tank))}>
              Remove {tank}
            </Button>
          ))}
        </Buttons>
      )}
    </>
  );
}

interface Wishes {
  readonly title: string;
  readonly animalKind: string;
  readonly tanks: readonly string[];
  readonly season: string;
  readonly note: string;
}

const nothingSaid: Wishes = { title: '', animalKind: '', tanks: [], season: '', note: '' };

function inputOf(
  recipe: string,
  { title, animalKind, tanks, note }: Wishes,
  season: Recipe['season'],
): ActInputs['forkRecipe'] {
  return {
    recipe,
    title,
    note,
    ...(animalKind !== '' && { animalKind }),
    ...(tanks.length > 0 && { tanks: [...tanks] }),
    ...(season && { season }),
  };
}
