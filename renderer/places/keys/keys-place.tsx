import { signal } from '@preact/signals';
import type { PlaceView } from '#renderer/frame/page-view.ts';
import { Keys } from '#renderer/help/key-list.tsx';
import { EmptyNote } from '#renderer/kit/empty-note.tsx';
import { ScrollPage } from '#renderer/kit/scroll-page.tsx';
import { SearchField } from '#renderer/kit/search-field.tsx';
import { printAct } from '#renderer/print/print-acts.ts';
import { keyGroups, type KeyGroup } from '#shared-calc/help/key-groups.ts';
import css from './keys.module.css';

/** Every key of the program, to search and to print. */
export function keysPlace(): () => PlaceView {
  const typed = signal('');
  return () => {
    const groups = groupsWith(typed.value);
    return {
      about: '',
      aside: 'on a Mac, Command stands for Ctrl',
      acts: [printAct(window)],
      work: (
        <ScrollPage class={css['page']}>
          <div class={css['search']}>
            <SearchField label="Find a key" text={typed.value} typing={(text) => (typed.value = text)} />
          </div>
          {groups.length === 0 && <EmptyNote>No key has these words.</EmptyNote>}
          {groups.map(({ title, keys }) => (
            <section key={title}>
              <h2>{title}</h2>
              <Keys keys={keys} />
            </section>
          ))}
        </ScrollPage>
      ),
    };
  };
}

function groupsWith(typed: string): readonly KeyGroup[] {
  const words = typed.toLowerCase().split(/\s+/).filter(Boolean);
  return keyGroups
    .map((group) => ({
      ...group,
      keys: group.keys.filter((key) => words.every((word) => key.join(' ').toLowerCase().includes(word))),
    }))
    .filter(({ keys }) => keys.length > 0);
}
