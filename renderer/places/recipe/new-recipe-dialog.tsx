import { useState } from 'preact/hooks';
import { writeRoute } from '#renderer/frame/place-route.ts';
import { AskDialog } from '#renderer/kit/ask-dialog.tsx';
import { Checkbox } from '#renderer/kit/checkbox.tsx';
import { DialogScroll } from '#renderer/kit/dialog.tsx';
import { Fields, TextField } from '#renderer/kit/field.tsx';
import { PickOne } from '#renderer/kit/pick-field.tsx';
import { Hint } from '#renderer/kit/note.tsx';
import type { BookStore } from '#renderer/store/book-store.ts';
import type { RecipePart } from '#shared-calc/recipe/recipe-answers.ts';
import { actNames } from '#shared-calc/words/act-names.ts';
import {
  answersOf,
  fittings,
  ingredientsOf,
  inTank,
  knownIngredients,
  layers,
  noAnswers,
  partWords,
  turned,
  type NewRecipe,
} from './new-recipe-form.ts';
import css from './new-recipe-dialog.module.css';

interface NewParts {
  readonly book: Pick<BookStore, 'records' | 'doAct'>;
  readonly close: () => void;
  /** The link to go on with; left out: to the recipe that was made. */
  readonly next?: string | undefined;
}

/** A whole recipe of answers: its layers, its soil, its fittings. */
export function NewRecipeDialog({ book, close, next }: NewParts) {
  const [form, setForm] = useState(noAnswers);
  const [wrong, setWrong] = useState<string>();
  const change = (some: Partial<NewRecipe>) => setForm({ ...form, ...some });
  const kinds = [...book.records.value.animalKind.values()].map(({ id, label }) => ({ value: id, label }));
  const run = () => {
    const refused = book.doAct('makeRecipe', { title: form.title, answers: answersOf(form) }, ({ added }) => {
      const made = added.find((each) => each.kind === 'recipe');
      // The view behind may be another one next: a dialog that is gone cannot say that it was closed.
      close();
      if (made?.kind === 'recipe') location.hash = next ?? writeRoute('recipe', made.record.id);
    });
    setWrong(refused);
    return refused === undefined;
  };
  return (
    <AskDialog title={actNames.newRecipe} does="Make it" run={run} wrong={wrong} close={close}>
      {(enter) => (
        <>
          <Fields look="wide">
            <TextField label="Title" text={form.title} typing={(title) => change({ title })} enter={enter} />
            {kinds.length > 0 && (
              <PickOne
                label="For animals"
                value={form.animals}
                options={[{ value: '', label: 'any' }, ...kinds]}
                choose={(animals) => change({ animals })}
              />
            )}
          </Fields>
          <Hint>A figure that is left empty is asked for in the recipe.</Hint>
          <DialogScroll label="What the recipe has" class={css['questions']}>
            <Layers form={form} change={change} />
            {form.parts.has('soil') && <Mix form={form} change={change} />}
            <h3>Fittings and life</h3>
            <Ticks parts={fittings} form={form} change={change} />
          </DialogScroll>
        </>
      )}
    </AskDialog>
  );
}

interface FormParts {
  readonly form: NewRecipe;
  readonly change: (some: Partial<NewRecipe>) => void;
}

function Ticks({ parts, form, change }: FormParts & { readonly parts: readonly RecipePart[] }) {
  return (
    <Fields>
      {parts.map((part) => (
        <Checkbox
          key={part}
          label={partWords[part]}
          on={form.parts.has(part)}
          turn={(on) => change({ parts: turned(form.parts, part, on) })}
        />
      ))}
    </Fields>
  );
}

function Layers({ form, change }: FormParts) {
  return (
    <>
      <h3>Layers, from the bottom</h3>
      <Ticks parts={inTank} form={form} change={change} />
      <Fields>
        {layers
          .filter((layer) => form.parts.has(layer))
          .map((layer) => (
            <TextField
              key={layer}
              label={`${partWords[layer]}, depth`}
              hint={layer === 'soil' ? 'Empty: up to the dam' : 'as 40 mm'}
              figure
              text={form.depths[layer] ?? ''}
              typing={(text) => change({ depths: { ...form.depths, [layer]: text } })}
            />
          ))}
      </Fields>
    </>
  );
}

function Mix({ form, change }: FormParts) {
  return (
    <>
      <h3>What the soil is mixed of</h3>
      <Fields>
        {knownIngredients().map(({ what, label }) => (
          <Checkbox
            key={what}
            label={label}
            on={form.mixed.has(what)}
            turn={(on) => change({ mixed: turned(form.mixed, what, on) })}
          />
        ))}
      </Fields>
      <Fields look="wide">
        <TextField
          label="Anything else"
          hint="Names with commas between"
          text={form.others}
          typing={(others) => change({ others })}
        />
      </Fields>
      <Fields>
        {ingredientsOf(form).map(({ what, label }) => (
          <TextField
            key={what}
            label={`${label}, parts`}
            figure
            text={form.shares.get(what) ?? ''}
            typing={(text) => change({ shares: new Map([...form.shares, [what, text]]) })}
          />
        ))}
      </Fields>
    </>
  );
}
