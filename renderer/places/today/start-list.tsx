import { useRef } from 'preact/hooks';
import type { BookContext } from '#renderer/books/book-api.ts';
import { afterFrame } from '#renderer/frame/after-frame.ts';
import { Sign } from '#renderer/frame/sign.tsx';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { Muted } from '#renderer/kit/muted.tsx';
import { Hint } from '#renderer/kit/note.tsx';
import { Unseen } from '#renderer/kit/unseen.tsx';
import type { JobApi } from '#renderer/store/job-api.ts';
import type { StartEntry, StartId } from '#shared-calc/derive/start-list.ts';
import { StartPart } from './start-part.tsx';
import type { TodayState } from './today-state.ts';
import css from './start-list.module.css';

interface ListParts {
  readonly state: TodayState;
  readonly entries: readonly StartEntry[];
  readonly context: BookContext;
}

/** What is missing for a first quote, each given where it stands; the first that is open is unfolded. */
export function StartList({ state, entries, context }: ListParts) {
  const list = useRef<HTMLOListElement>(null);
  const firstOpen = entries.find((each) => each.state === 'open')?.id;
  const chosen = state.start.value ?? firstOpen;
  const done = entries.filter((each) => each.state === 'done').length;
  const next = (id: StartId) => {
    const at = entries.findIndex((each) => each.id === id);
    const after = [...entries.slice(at + 1), ...entries.slice(0, at)].find((each) => each.state === 'open');
    state.start.value = after?.id;
    afterFrame(() => fieldIn(list.current)?.focus());
  };
  return (
    <section class={css['start']} aria-label="To a first quote">
      <h2>
        To a first quote{' '}
        <Muted small>
          {done} of {entries.length} done
        </Muted>
      </h2>
      <Hint>Nothing invented counts here. What unblocks most stands first; each is given where it stands.</Hint>
      <ol ref={list}>
        {entries.map((entry) => (
          <Entry
            key={entry.id}
            entry={entry}
            isOpen={entry.id === chosen}
            turn={() => (state.start.value = entry.id === chosen ? 'none' : entry.id)}
            next={() => next(entry.id)}
            api={state.api}
            context={context}
          />
        ))}
      </ol>
    </section>
  );
}

/** The first empty field of the entry that is unfolded, else its first. */
function fieldIn(list: HTMLElement | null): HTMLElement | undefined {
  const fields = [...(list?.querySelectorAll<HTMLInputElement>('input, select, textarea') ?? [])];
  return fields.find(({ value }) => value === '') ?? fields[0];
}

interface EntryParts {
  readonly entry: StartEntry;
  readonly isOpen: boolean;
  readonly turn: () => void;
  readonly next: () => void;
  readonly api: JobApi;
  readonly context: BookContext;
}

function Entry({ entry, isOpen, turn, next, api, context }: EntryParts) {
  const { id, label, state, needs, says } = entry;
  return (
    <li data-state={state}>
      <Button look="bare" aria-expanded={isOpen} onClick={turn}>
        <Sign name={state === 'done' ? 'done' : 'need'} />
        <b>{label}</b>
        <Muted>{says}</Muted>
        <span>{state === 'done' ? 'done' : needWords(id, needs)}</span>
        <Unseen>, {isOpen ? 'unfolded' : 'folded'}</Unseen>
      </Button>
      {isOpen && (
        <div role="group" aria-label={label} class={css['part']}>
          <StartPart entry={entry} api={api} context={context} />
          <Buttons>
            <Button onClick={next}>Next</Button>
          </Buttons>
        </div>
      )}
    </li>
  );
}

function needWords(id: StartId, needs: number): string {
  const [one, several] = nouns[id] ?? ['figure', 'figures'];
  return `needs ${needs} ${needs === 1 ? one : several}`;
}

const nouns: Readonly<Partial<Record<StartId, readonly [one: string, several: string]>>> = {
  units: ['choice', 'choices'],
  currency: ['choice', 'choices'],
  terms: ['entry', 'entries'],
  tank: ['tank', 'tanks'],
  recipe: ['recipe', 'recipes'],
  job: ['job', 'jobs'],
  supplier: ['supplier', 'suppliers'],
  prices: ['price', 'prices'],
  measures: ['measure', 'measures'],
};
