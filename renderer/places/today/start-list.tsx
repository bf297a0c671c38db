import { useLayoutEffect, useRef, useState } from 'preact/hooks';
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
import css from './start-list.module.css';

interface ListParts {
  readonly api: JobApi;
  readonly entries: readonly StartEntry[];
  /** The entries are those from before the last change. */
  readonly isBehind: boolean;
  readonly context: BookContext;
}

/** What is missing for a first quote, each given where it stands; the first that is open is unfolded. */
export function StartList({ api, entries, isBehind, context }: ListParts) {
  const list = useRef<HTMLOListElement>(null);
  // The last figure of an entry does not fold it under the hand that writes: the next one unfolds when it is asked for.
  const [unfolded, unfold] = useState<StartId>();
  const isNew = useRef(true);
  useLayoutEffect(() => {
    if (!isNew.current || isBehind) return;
    isNew.current = false;
    unfold(entries.find(isOpen)?.id);
  });
  const done = entries.filter((each) => !isOpen(each)).length;
  const next = (id: StartId) => {
    const at = entries.findIndex((each) => each.id === id);
    const after = [...entries.slice(at + 1), ...entries.slice(0, at)].find(isOpen);
    unfold(after?.id);
    afterFrame(() => firstFieldIn(list.current)?.focus());
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
      <ol ref={list} onKeyDown={goOnByEnter}>
        {entries.map((entry) => (
          <Entry
            key={entry.id}
            entry={entry}
            isUnfolded={entry.id === unfolded}
            turn={() => unfold(entry.id === unfolded ? undefined : entry.id)}
            next={() => next(entry.id)}
            api={api}
            context={context}
          />
        ))}
      </ol>
    </section>
  );
}

function isOpen({ state }: StartEntry): boolean {
  return state === 'open';
}

const reached = 'input, select, textarea, a, li > [role="group"] button';

/** Where an unfolded entry is gone on with: its first empty field, else the first of all. */
function firstFieldIn(list: HTMLElement | null): HTMLElement | undefined {
  const all = [...(list?.querySelectorAll<HTMLElement>(reached) ?? [])];
  return all.find((each) => each instanceof HTMLInputElement && each.value === '') ?? all[0];
}

/** Enter goes on to the next field, and after the last to the button; a text that is refused keeps the keyboard. */
function goOnByEnter({ key, target }: KeyboardEvent): void {
  if (key !== 'Enter' || !(target instanceof HTMLInputElement)) return;
  afterFrame(() => {
    if (document.activeElement !== target || target.getAttribute('aria-invalid') === 'true') return;
    const all = [...(target.closest('[role="group"]')?.querySelectorAll<HTMLElement>(reached) ?? [])];
    all[all.indexOf(target) + 1]?.focus();
  });
}

interface EntryParts {
  readonly entry: StartEntry;
  readonly isUnfolded: boolean;
  readonly turn: () => void;
  readonly next: () => void;
  readonly api: JobApi;
  readonly context: BookContext;
}

function Entry({ entry, isUnfolded, turn, next, api, context }: EntryParts) {
  const { label, state, says } = entry;
  return (
    <li data-state={state}>
      <Button look="bare" aria-expanded={isUnfolded} onClick={turn}>
        <Sign name={state === 'done' ? 'done' : 'need'} />
        <b>{label}</b>
        <Muted>{says}</Muted>
        <span>{state === 'done' ? 'done' : needWords(entry)}</span>
        <Unseen>, {isUnfolded ? 'unfolded' : 'folded'}</Unseen>
      </Button>
      {isUnfolded && (
        <div role="group" aria-label={label} class={css['part']}>
          <StartPart entry={entry} api={api} context={context} next={next} />
          <Buttons>
            <Button onClick={next}>Next</Button>
          </Buttons>
        </div>
      )}
    </li>
  );
}

function needWords({ id, needs, missing }: StartEntry): string {
  if (missing.length === 0 && (id === 'prices' || id === 'measures')) return 'not known yet';
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
