import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import type { BookContext, BookApi } from '#renderer/books/book-api.ts';
import { ChoiceField, SettledField, TextField, Fields } from '#renderer/kit/field.tsx';
import { byCode } from '#renderer/books/record-table.ts';
import { writeRoute } from '#renderer/frame/place-route.ts';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { Hint } from '#renderer/kit/note.tsx';
import type { Job, Records } from '#shared-calc/records/records.ts';
import css from './first-minute.module.css';
import { ScrollPage } from '#renderer/kit/scroll-page.tsx';

export interface FirstMinuteParts {
  readonly context: BookContext;
  readonly api: BookApi;
}

/** Whether no size of a book is on any bench yet. */
export function isFirstMinute(records: Pick<Records, 'size'>): boolean {
  return records.size.size === 0;
}

/** Guides a new book to its first size in three acts: a name, a job, a size. Each is saved at once. */
export function FirstMinute({ context, api }: FirstMinuteParts) {
  const { records, workshop } = context;
  const job = [...records.job.values()].find(({ state }) => state !== 'closed');
  return (
    <ScrollPage class={css['firstMinute']}>
      <h2>To your first size in three acts</h2>
      <ol>
        <Act title="Name the workshop" done={workshop.name === '' ? '' : workshop.name}>
          <NameAct context={context} api={api} />
        </Act>
        <Act title="Begin a job" done={job ? `${job.id} ${job.title}` : ''}>
          {!job && <JobAct context={context} api={api} />}
        </Act>
        <Act title="Take a size" done="">
          {job ? (
            <SizeAct job={job} context={context} api={api} />
          ) : (
            <Hint>A size is taken for a job; begin one first.</Hint>
          )}
        </Act>
      </ol>
      <Hint>
        Prices are yours to set: a tank's in the <a href={writeRoute('tank-book')}>tank book</a>, packs in the{' '}
        <a href={writeRoute('material-book')}>material book</a>. Until then the bench works every quantity and says
        which price is missing.
      </Hint>
    </ScrollPage>
  );
}

interface ActParts {
  readonly title: string;
  /** What was done; empty until it is. */
  readonly done: string;
  readonly children: ComponentChildren;
}

function Act({ title, done, children }: ActParts) {
  return (
    <li>
      <h3>{title}</h3>
      {done !== '' && <p class={css['actDone']}>Done: {done}</p>}
      {children}
    </li>
  );
}

function NameAct({ context: { workshop }, api }: FirstMinuteParts) {
  const settle = (name: string) => {
    return api.doAct('put', { kind: 'workshop', record: { ...workshop, name: name.trim() } });
  };
  return (
    <SettledField label="Name of the workshop" text={workshop.name} settle={settle} hint="It stands on every quote" />
  );
}

function JobAct({ context: { records }, api }: FirstMinuteParts) {
  const recipes = [...records.recipe.values()].toSorted(byCode);
  const [title, setTitle] = useState('');
  const [recipe, setRecipe] = useState(recipes[0]?.id ?? '');
  const begin = () => {
    api.doAct('newJob', { title, recipe, sizes: [], writings: [], by: 'us' });
  };
  return (
    <>
      <Fields>
        <TextField
          label="What it is called"
          text={title}
          typing={setTitle}
          enter={begin}
          hint="such as Reading room, east wall"
        />
        <ChoiceField
          label="House recipe"
          value={recipe}
          options={recipes.map((each) => ({ value: each.id, label: `${each.id} ${each.title}` }))}
          choose={setRecipe}
          hint={records.recipe.get(recipe)?.note ?? ''}
        />
      </Fields>
      <Buttons>
        <Button look="main" disabled={title.trim() === ''} onClick={begin}>
          Begin the job
        </Button>
      </Buttons>
    </>
  );
}

function SizeAct({ job, context: { records }, api }: FirstMinuteParts & { readonly job: Job }) {
  const tanks = [...records.tank.values()].toSorted(byCode);
  const [tank, setTank] = useState(tanks[0]?.id ?? '');
  const take = () => {
    const goOn = () => (location.hash = writeRoute('bench', job.id));
    api.doAct('setSizes', { job: job.id, sizes: [{ tank, count: 1 }] }, goOn);
  };
  return (
    <>
      <Fields>
        <ChoiceField
          label="Tank"
          value={tank}
          options={tanks.map(({ id, label }) => ({ value: id, label: `${id} ${label}` }))}
          choose={setTank}
          hint="inside sizes; yours can be added in the tank book"
        />
      </Fields>
      <Buttons>
        <Button look="main" disabled={tank === ''} onClick={take}>
          Take a size
        </Button>
      </Buttons>
    </>
  );
}
