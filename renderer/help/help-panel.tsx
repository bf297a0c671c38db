import { useEffect, useRef, useState } from 'preact/hooks';
import { writeRoute } from '#renderer/frame/place-route.ts';
import { Button } from '#renderer/kit/button.tsx';
import { EmptyNote } from '#renderer/kit/empty-note.tsx';
import { Link } from '#renderer/kit/link.tsx';
import { SearchField } from '#renderer/kit/search-field.tsx';
import type { PlaceId } from '#shared-calc/contract/places.ts';
import { searchHelp, type HelpHit } from '#shared-calc/help/search-help.ts';
import { topicOf, topics } from '#shared-calc/help/topic.ts';
import { actNames } from '#shared-calc/words/act-names.ts';
import { Keys } from './key-list.tsx';
import type { HelpState } from './help-state.ts';
import { TopicBody } from './topic-body.tsx';
import css from './help-panel.module.css';

interface HelpParts {
  readonly help: HelpState;
  readonly here: PlaceId;
}

/** The help beside the work: the topic of the place, every other topic, and one search over all of them. */
export function HelpPanel({ help, here }: HelpParts) {
  const panel = useRef<HTMLElement>(null);
  const [typed, type] = useState('');
  const topic = topicOf(help.topic.value ?? here);
  const show = (id: string) => {
    type('');
    help.show(id);
    panel.current?.focus();
  };
  useReturnFocus(panel);
  if (!topic) return null;
  return (
    <aside
      ref={panel}
      class={css['help']}
      aria-label="Help"
      data-part="help"
      id="help-panel"
      tabIndex={-1}
      onKeyDown={(event) => event.key === 'Escape' && help.close()}
    >
      <Head typed={typed} type={type} close={help.close} />
      {typed.trim() === '' ? (
        <>
          <h2>{topic.title}</h2>
          <TopicBody topic={topic} show={show} />
          {topic.id !== here && (
            <p>
              <Button look="plain" onClick={() => show(here)}>
                Help for this place
              </Button>
            </p>
          )}
          <AllTopics show={show} />
        </>
      ) : (
        <Hits hits={searchHelp(typed)} show={show} />
      )}
    </aside>
  );
}

interface HeadParts {
  readonly typed: string;
  readonly type: (text: string) => void;
  readonly close: () => void;
}

function Head({ typed, type, close }: HeadParts) {
  return (
    <header class={css['head']}>
      <SearchField label="Find in the help" placeholder="Find in help, keys, functions" text={typed} typing={type} />
      <Button onClick={close}>{actNames.close}</Button>
    </header>
  );
}

/** The panel takes the focus; when it closes, the focus goes back to what had it, if that is still there. */
function useReturnFocus(panel: { readonly current: HTMLElement | null }): void {
  useEffect(() => {
    const before = document.activeElement;
    panel.current?.focus();
    return () => {
      if (before instanceof HTMLElement && before.isConnected) before.focus();
    };
  }, []);
}

interface Shown {
  readonly show: (topic: string) => void;
}

const mostHits = 40;

function Hits({ hits, show }: Shown & { readonly hits: readonly HelpHit[] }) {
  return (
    <section aria-label="Found" aria-live="polite">
      {hits.length === 0 ? (
        <EmptyNote>Nothing in the help has these words.</EmptyNote>
      ) : (
        <ul class={css['hits']}>
          {hits.slice(0, mostHits).map((hit) => (
            <li key={keyOf(hit)}>
              <Hit hit={hit} show={show} />
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

function keyOf(hit: HelpHit): string {
  if (hit.is === 'topic') return `topic ${hit.topic.id}`;
  return hit.is === 'function' ? `function ${hit.name}` : `key ${hit.keys} ${hit.does}`;
}

function Hit({ hit, show }: Shown & { readonly hit: HelpHit }) {
  if (hit.is === 'key') return <Keys keys={[[hit.keys, hit.does]]} />;
  if (hit.is === 'function') return <Link href={writeRoute('function-book', hit.name)}>{hit.title}</Link>;
  return (
    <Button look="plain" onClick={() => show(hit.topic.id)}>
      {hit.topic.title}
    </Button>
  );
}

const groups = [
  { title: 'Guides', is: 'guide' },
  { title: 'Places', is: 'place' },
  { title: 'Words', is: 'word' },
] as const;

function AllTopics({ show }: Shown) {
  return (
    <nav class={css['all']} aria-label="All topics">
      {groups.map(({ title, is }) => (
        <details key={is} open={is === 'guide'}>
          <summary>{title}</summary>
          <ul>
            {topics
              .filter((topic) => topic.is === is)
              .map(({ id, title: name }) => (
                <li key={id}>
                  <Button look="plain" onClick={() => show(id)}>
                    {name}
                  </Button>
                </li>
              ))}
          </ul>
        </details>
      ))}
    </nav>
  );
}
