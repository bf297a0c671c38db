import { useEffect, useRef, useState } from 'preact/hooks';
import { contextNow } from '#renderer/books/book-hands.ts';
import { ChoiceEntry, TextEntry } from '#renderer/books/entry.tsx';
import { writeRoute } from '#renderer/frame/place-route.ts';
import type { MoneyHands } from './money-hands.ts';
import { askedJob, noWishes, type Wishes } from './asked-job.ts';

interface SheetParts {
  readonly hands: MoneyHands;
  readonly close: () => void;
}

const fields: readonly (readonly [keyof Omit<Wishes, 'recipe'>, string, string])[] = [
  ['title', 'Title', ''],
  ['client', 'Client', ''],
  ['contact', 'Who to speak to', ''],
  ['sizes', 'Sizes', 'as T03, T07x2; it may wait'],
  ['animals', 'Animals wanted', ''],
  ['audience', 'Who is near it', ''],
  ['handover', 'Handover wanted', 'a day; it may wait'],
];

/** A first message as a job of its own. */
export function NewJobSheet({ hands, close }: SheetParts) {
  const sheet = useRef<HTMLDialogElement>(null);
  const [wishes, setWishes] = useState<Wishes>({
    ...noWishes,
    recipe: [...hands.records.value.recipe.keys()][0] ?? '',
  });
  const [wrong, setWrong] = useState<string>();
  useEffect(() => sheet.current?.showModal(), []);
  const { records, today } = contextNow(hands);
  const make = () => {
    const made = askedJob(records, wishes, today);
    setWrong(made.ok ? undefined : made.fault);
    if (!made.ok) return;
    hands.apply(made.value.change);
    hands.openJob(made.value.job);
    location.hash = writeRoute('jobs', made.value.job);
    sheet.current?.close();
  };
  const recipes = [...records.recipe.values()].map(({ id, title }) => ({ value: id, label: `${id} ${title}` }));
  return (
    <dialog ref={sheet} class="sheet" aria-labelledby="new-job-title" onClose={close}>
      <h2 id="new-job-title">New job</h2>
      <div class="entries wide">
        {fields.map(([key, label, hint]) => (
          <TextEntry
            key={key}
            label={label}
            {...(hint !== '' && { hint })}
            text={wishes[key]}
            typing={(text) => setWishes({ ...wishes, [key]: text })}
            enter={make}
          />
        ))}
        <ChoiceEntry
          label="House recipe"
          value={wishes.recipe}
          options={recipes}
          choose={(recipe) => setWishes({ ...wishes, recipe })}
        />
      </div>
      <p class="rule-fault" role="alert">
        {wrong}
      </p>
      <div class="pair">
        <button class="button" type="button" onClick={() => sheet.current?.close()}>
          Leave it
        </button>
        <button class="button act" type="button" onClick={make}>
          Make the job
        </button>
      </div>
    </dialog>
  );
}
