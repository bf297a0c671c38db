import { openMade } from './open-made.ts';
import { useState } from 'preact/hooks';
import { contextNow } from '#renderer/books/book-api.ts';
import { TextField, Fields } from '#renderer/kit/field.tsx';
import { PickOne } from '#renderer/kit/pick-field.tsx';
import type { JobApi } from '#renderer/store/job-api.ts';
import { headingOf } from '#shared-calc/fields/record-fields.ts';
import { AskDialog } from '#renderer/kit/ask-dialog.tsx';
import { PickTanks } from './pick-tanks.tsx';
import { sizeWords } from '#shared-calc/jobs/job-sheet.ts';
import { readSizes } from '#shared-calc/jobs/read-sizes.ts';
import { typedJob, noWishes, type Wishes } from './asked-job.ts';

interface SheetParts {
  readonly api: JobApi;
  readonly close: () => void;
}

const fields: readonly (readonly [keyof Omit<Wishes, 'recipe'>, string, string])[] = [
  ['title', headingOf('job', 'title'), ''],
  ['client', headingOf('job', 'client'), ''],
  ['contact', headingOf('job', 'contact'), ''],
  ['sizes', 'Sizes', 'as T03, T07x2; it may wait'],
  ['animals', headingOf('job', 'animals'), ''],
  ['audience', headingOf('job', 'audience'), ''],
  ['handover', headingOf('job', 'handover'), 'a day; it may wait'],
];

/** Creates a job from a client's first message. */
export function NewJobDialog({ api, close }: SheetParts) {
  const context = contextNow(api);
  const { records } = context;
  const recipes = [...records.recipe.values()].map(({ id, title }) => ({ value: id, label: `${id} ${title}` }));
  const [wishes, setWishes] = useState<Wishes>({ ...noWishes, recipe: recipes[0]?.value ?? '' });
  const [wrong, setWrong] = useState<string>();
  const make = () => {
    const typed = typedJob(records, wishes, context);
    const refused = typed.ok ? api.doAct('newJob', typed.value, (change) => openMade(api, change)) : typed.fault;
    setWrong(refused);
    return refused === undefined;
  };
  const picked = readSizes(wishes.sizes, records);
  const change = (some: Partial<Wishes>) => setWishes({ ...wishes, ...some });
  return (
    <AskDialog title="New job" does="Make the job" run={make} wrong={wrong} close={close}>
      {(enter) => (
        <Fields look="wide">
          {fields.map(([key, label, hint]) => (
            <TextField
              key={key}
              label={label}
              {...(hint !== '' && { hint })}
              text={wishes[key]}
              typing={(text) => change({ [key]: text })}
              enter={enter}
              {...(key === 'handover' && { days: context })}
            />
          ))}
          <PickOne
            label={headingOf('job', 'recipe')}
            value={wishes.recipe}
            options={recipes}
            choose={(recipe) => change({ recipe })}
          />
          <PickTanks
            tanks={[...records.tank.values()]}
            sizes={picked.ok ? picked.value : []}
            put={(wanted) => change({ sizes: wanted.map(sizeWords).join(', ') })}
          />
        </Fields>
      )}
    </AskDialog>
  );
}
