import { signal } from '@preact/signals';
import { pageOf } from './app.tsx';
import { openBridge } from './bridge.ts';
import type { PageView } from './frame/page-view.ts';
import { mountPage } from './mount-page.tsx';
import { pageClock } from './store/clock.ts';
import { openPageStore } from './store/page-store.ts';

/** Where no book can be read the places stand empty, and say why. */
function pageWithoutBook(says: string): PageView {
  return {
    workshop: signal(''),
    line: signal({ saved: 'No book is open', said: { words: says, refused: true } }),
    lineActs: { undo: () => undefined, redo: () => undefined },
    keys: [['F1', 'keys']],
    nextFlag: () => undefined,
    place: () => ({ about: '', aside: '', acts: [], look: 'empty-place', work: <p class="empty-note">{says}</p> }),
  };
}

const store = await openPageStore(openBridge(window), pageClock());
mountPage(store.ok ? pageOf(store.value) : pageWithoutBook(store.fault));
